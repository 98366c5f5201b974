using System.Collections.Immutable;
using Sightglass.Plant.Calculators.Running;

namespace Sightglass.Plant.Tests.Calculators;

/// <summary>Stops with brakes that build up as they do, against the closed forms of section 4; parts of a route; the ruling grade.</summary>
public sealed class RouteStopTests
{
    private const double Mph = 0.44704;
    private const double Full = 450e3 * 1.05 * 0.9;

    private static readonly RouteTrain s_bare = new() { Mass = 450e3, TurningShare = 0.05, Length = 0, Resistance = [0, 0, 0], Power = 1.8e6, DrivenWeight = 720e3, Deceleration = 0.9 };

    /// <summary>From 79 mph with 1 s dead, 4 s of build-up and 0.9 m/s²: 798.25468 m and 42.240178 s. Formulas read in a stored calculator page.</summary>
    [Fact]
    public void A4_09_EvenBuildUp_StandsWhereTheClosedFormSays()
    {
        RouteStop stop = RouteStop.Of(s_bare, [new(9000, 0, 100)], 100, 79 * Mph, (t, _) => Full * Math.Clamp((t - 1) / 4, 0, 1), 0.01);
        Assert.Equal(798.25468, stop.Metres, 0.02);
        Assert.Equal(42.240178, stop.Seconds, 0.01);
        Assert.Equal(100 + stop.Metres, stop.Points[^1].Metres, 1e-9);
    }

    /// <summary>Down 1.5 % from 60 mph with 0.9 m/s² at once and no turning parts: 477.76935 m. Source: energy.</summary>
    [Fact]
    public void A4_10_DownAGrade_TakesTheDistanceOfItsEnergy()
    {
        RouteTrain train = s_bare with { TurningShare = 0 };
        Assert.Equal(477.76935, RouteStop.Of(train, [new(2500, -0.015, 100)], 0, 60 * Mph, (_, _) => 450e3 * 0.9, 0.01).Metres, 0.02);
    }

    [Fact]
    public void Of_GradeThatPullsMoreThanTheBrakes_NeverStands() =>
        Assert.Equal(double.PositiveInfinity, RouteStop.Of(s_bare, [new(2500, -0.05, 100)], 0, 10, (_, _) => 50e3).Metres);

    /// <summary>A curve that is even loses as much push as it does; one that is there at once loses none.</summary>
    [Fact]
    public void BuildUp_OfEvenCurves_IsWhatTheyAre()
    {
        (double, double)[] fine = [.. Enumerable.Range(0, 601).Select(i => i / 10.0).Select(t => (t, 80e3 * Math.Clamp((t - 1.5) / 4, 0, 1)))];
        BuildUp close = BuildUp.Of(fine);
        Assert.InRange(close.DeadSeconds, 1.7, 1.8); // begun at a twentieth of the full force; a row of the curve is a tenth of a second
        Assert.Equal(1.5 + 2, close.DeadSeconds + (close.BuildUpSeconds / 2), 1e-6); // as much push is lost
        Assert.Equal(new(80e3, 0, 0), BuildUp.Of([(0, 80e3), (10, 80e3)]));
        Assert.Equal(new(0, 0, 0), BuildUp.Of([(0, 0), (10, 0)]));
    }

    /// <summary>A run in two parts ends where the whole one does, and each part adds its stop.</summary>
    [Fact]
    public void Of_PartOfARoute_BeginsAndStandsWhereItIsTold()
    {
        ImmutableArray<RouteStretch> route = [new(3000, 0, 30), new(5000, 0.01, 25), new(4000, -0.01, 20)];
        RouteResult first = RouteRun.Of(s_bare with { Length = 200 }, route, to: 6000);
        Assert.Equal((RouteOutcome.Arrived, 6000), (first.Outcome, Math.Round(first.End.Metres / 5) * 5));
        RouteResult second = RouteRun.Of(s_bare with { Length = 200 }, route, from: first.End.Metres);
        Assert.Equal((RouteOutcome.Arrived, first.End.Metres), (second.Outcome, second.Points[0].Metres));
        Assert.Equal(12000, second.End.Metres, 5.0);
        Assert.Equal(0, first.Energy.Open + second.Energy.Open, 1.0);
        Assert.Equal(first.Energy.Pulled, first.Points.Zip(first.Points.Skip(1)).Sum(p => p.Second.Pull * (p.Second.Metres - p.First.Metres)), first.Energy.Pulled * 1e-9);
    }

    /// <summary>The motors' most holds where the rail would hold more: 450 t and 5 % with 90 kN to 5 m/s take 26.25 s.</summary>
    [Fact]
    public void Of_MotorsThatGiveLessThanTheRailHolds_SpeedsUpByThem()
    {
        RouteResult run = RouteRun.Of(s_bare with { Most = 90e3 }, [new(20e3, 0, 100)], step: 0.05);
        RoutePoint at = run.Points.First(p => p.Speed >= 5);
        Assert.Equal(26.25, at.Seconds, 0.06);
    }

    /// <summary>A train longer than a ramp has only its share of it under itself.</summary>
    [Fact]
    public void RulingGrade_OfAShortRamp_IsItsMeanUnderTheTrain()
    {
        ImmutableArray<RouteStretch> route = [new(2000, 0, 30), new(100, 0.02, 30), new(2000, 0.005, 30, 0, 0.1, 0.2), new(1000, -0.03, 30)];
        RulingGrade ruling = RulingGrade.Of(route, 400);
        Assert.InRange(ruling.Metres, 2400, 2401);
        Assert.Equal(((0.02 * 100) + (0.005 * 300)) / 400, ruling.Share, 1e-5);
        Assert.Equal((0.1, 0.2), (ruling.Adhesion, ruling.Sanded));
        Assert.Equal(0, RulingGrade.Of([new(1000, -0.01, 30)], 100).Share);
    }
}
