using System.Collections.Immutable;
using Sightglass.Plant.Calculators.Running;

namespace Sightglass.Plant.Tests.Calculators;

/// <summary>Runs over a route: the closed forms of section 4 as limits of it, and energy that adds up over a route with everything.</summary>
public sealed class RouteRunTests
{
    private const double Mph = 0.44704;
    private const double Pound = 4.4482216152605;
    private const double ShortTon = 2000 * 0.45359237;
    private const double Horsepower = 745.69987158227;
    private const double Gravity = 9.80665;
    private const double Fast = 1000;

    /// <summary>A locomotive of 130 short tons and six coaches of 60, 3,000 hp at 0.82.</summary>
    private static readonly RouteTrain s_train = new()
    {
        Mass = 490 * ShortTon,
        Length = 170,
        Resistance = [.. ResistanceForm.Modified().Sheet(130 * ShortTon, 4).Zip(ResistanceForm.Modified().Sheet(60 * ShortTon, 4), (m, c) => m + (6 * c))],
        Power = 3000 * Horsepower * 0.82,
        DrivenWeight = 130 * ShortTon * Gravity,
        Deceleration = 0.9,
        DeadSeconds = 1,
        BuildUpSeconds = 4,
        Efficiency = 0.82,
        HeadEnd = 300e3,
        Consumption = 215e-3 / 3.6e6,
    };

    private static readonly RouteTrain s_bare = s_train with { Mass = 450e3, TurningShare = 0.05, Length = 0, Resistance = [0, 0, 0], HeadEnd = 0 };

    /// <summary>Far enough along it runs at the speed of A4-06 (method of Hay, from memory). The row takes 20 lb/ton for a per cent where the run takes the sine: 5·10⁻⁵ of the grade.</summary>
    [Theory]
    [InlineData(0, 0, 115.66205)]
    [InlineData(0.01, 0, 69.167643)]
    [InlineData(0.01, 3, 64.907933)]
    public void A4_06_LongGrade_ComesToItsBalanceSpeed(double grade, double curve, double milesAnHour)
    {
        RouteResult run = RouteRun.Of(s_train, [new(400e3, grade, Fast, curve)], step: 1);
        Assert.Equal(milesAnHour, run.Points.Max(p => p.Speed) / Mph, 1e-4 * milesAnHour);
    }

    /// <summary>180 kN up to 1.8 MW, 450 t and 5 %, nothing resisting: 26.25 s to 10 m/s; 173.90625 s and 3,795.3125 m to 35 m/s. Derived.</summary>
    [Fact]
    public void A4_07_NothingResisting_SpeedsUpByForceThenPower()
    {
        RouteResult run = RouteRun.Of(s_bare with { Power = 1.8e6, DrivenWeight = 720e3 }, [new(20e3, 0, Fast)], step: 0.05);
        Assert.Equal(26.25, At(run, 10).Seconds, 1e-3);
        RoutePoint end = At(run, 35);
        Assert.Equal(173.90625, end.Seconds, 173.9 * 1e-4);
        Assert.Equal(3795.3125, end.Metres, 3795 * 1e-4);
    }

    /// <summary>472.5 t with a constant 52 kN against 12 N/(m/s)²: 239.13966 s and 3,066.4173 m to 25 m/s. Derived.</summary>
    [Fact]
    public void A4_08_AgainstDrag_SpeedsUpByTheClosedForm()
    {
        RouteTrain train = s_bare with { Mass = 472.5e3, TurningShare = 0, Power = 1e12, DrivenWeight = 208e3, Resistance = [0, 0, 12] };
        RoutePoint end = At(RouteRun.Of(train, [new(20e3, 0, Fast)], step: 0.05), 25);
        Assert.Equal(239.13966, end.Seconds, 239 * 1e-4);
        Assert.Equal(3066.4173, end.Metres, 3066 * 1e-4);
    }

    /// <summary>From 79 mph with 1 s dead, 4 s of build-up and 0.9 m/s²: 798.25468 m and 42.240178 s before the end it begins to brake, and stands there. Formulas read in a stored calculator page.</summary>
    [Fact]
    public void A4_09_LevelStop_BeginsWhereTheClosedFormSays()
    {
        RouteResult run = RouteRun.Of(s_bare, [new(5000, 0, 79 * Mph)], speed: 79 * Mph, step: 0.02);
        Assert.Equal(RouteOutcome.Arrived, run.Outcome);
        Assert.Equal(5000, run.End.Metres, 0.5);
        RoutePoint begins = run.Points.First(p => p.Brake > 0);
        Assert.Equal(798.25468 - (79 * Mph * 1), run.End.Metres - begins.Metres, 1.5); // the dead second goes by before the first brake; a step is 0.7 m
        Assert.Equal(42.240178 - 1, run.End.Seconds - begins.Seconds, 0.2);
    }

    /// <summary>Down 1.5 % from 60 mph with 0.9 m/s² at once and no turning parts: 477.76935 m. Source: energy. (Uphill it plans without the grade's help and brakes less.)</summary>
    [Fact]
    public void A4_10_StopDownAGrade_TakesTheDistanceOfItsEnergy()
    {
        RouteTrain train = s_bare with { TurningShare = 0, DeadSeconds = 0, BuildUpSeconds = 0 };
        RouteResult run = RouteRun.Of(train, [new(2500, -0.015, 60 * Mph)], speed: 60 * Mph, step: 0.02);
        Assert.Equal(RouteOutcome.Arrived, run.Outcome);
        Assert.Equal(477.76935, run.End.Metres - run.Points.First(p => p.Brake > 0.5).Metres, 1.5); // a step is half a metre
    }

    /// <summary>Hills, curves, limits and two restricted stretches: it keeps every limit under all of the train, arrives, and its energies add up; what was lifted is m·g·Δz.</summary>
    [Fact]
    public void Of_RouteWithEverything_KeepsLimitsAndEnergy()
    {
        ImmutableArray<RouteStretch> route =
        [
            new(3000, 0, 60 * Mph), new(4000, 0.012, 79 * Mph, 2), new(1500, 0.004, 40 * Mph, 6), new(5000, -0.015, 79 * Mph), new(2000, -0.003, 30 * Mph), new(6000, 0, 79 * Mph),
        ];
        RouteResult run = RouteRun.Of(s_train, route);
        Assert.Equal(RouteOutcome.Arrived, run.Outcome);
        Assert.Equal(route.Sum(r => r.Length), run.End.Metres, 5.0);
        Assert.Equal(0, run.Energy.Open, run.Energy.Pulled * 1e-12);
        Assert.All(run.Points, p => Assert.True(p.Speed <= (Limit(route, p.Metres) * 1.005) + 0.05, $"{p} over {Limit(route, p.Metres)}"));
        double rise = route.Sum(r => r.Length * TrackResistance.GradeShare(r.Grade));
        Assert.Equal(s_train.Mass * Gravity * rise, run.Energy.Lifted, s_train.Mass * Gravity * Math.Abs(rise) * 0.01); // by the last few metres
        double burnt = ((run.Energy.Pulled / 0.82) + (300e3 * run.End.Seconds)) * s_train.Consumption;
        Assert.Equal(burnt, run.Fuel, burnt * 1e-9);
    }

    /// <summary>On 4 % a wet rail does not hold the train, sand does; and what adhesion cannot start does not start.</summary>
    [Fact]
    public void Of_WetRailOnAGrade_StallsWithoutSand()
    {
        ImmutableArray<RouteStretch> route = [new(1000, 0.03, 30 * Mph, 0, 0.10, 0.22)];
        Assert.Equal(RouteOutcome.Stalled, RouteRun.Of(s_train, route).Outcome);
        Assert.Equal(RouteOutcome.Arrived, RouteRun.Of(s_train with { Sands = true }, route).Outcome);
    }

    [Fact]
    public void Of_BrakesThatDoNotHoldTheGrade_RunsAway() =>
        Assert.Equal(RouteOutcome.RanAway, RouteRun.Of(s_train with { Deceleration = 0.2 }, [new(20e3, -0.04, 30 * Mph)]).Outcome);

    /// <summary>The least limit of all that a train of this length stands on.</summary>
    private static double Limit(ImmutableArray<RouteStretch> route, double head)
    {
        double least = double.PositiveInfinity, from = 0;
        foreach (RouteStretch s in route)
        {
            least = from < head && from + s.Length > head - s_train.Length ? Math.Min(least, s.Limit) : least;
            from += s.Length;
        }

        return least;
    }

    private static RoutePoint At(RouteResult run, double speed)
    {
        int i = 1;
        while (run.Points[i].Speed < speed)
        {
            i++;
        }

        (RoutePoint a, RoutePoint b) = (run.Points[i - 1], run.Points[i]);
        double share = (speed - a.Speed) / (b.Speed - a.Speed);
        return new(a.Seconds + (share * (b.Seconds - a.Seconds)), a.Metres + (share * (b.Metres - a.Metres)), speed, 0);
    }
}
