using Sightglass.World.Tests.Trade;

namespace Sightglass.World.Tests.TrainControl;

/// <summary>The demo's cab signals: what the pickups hear, what the cab shows, and what a change without an answer brings.</summary>
public sealed class CabSignalTests
{
    /// <summary>Voltage of a coil over a long wire: B = µ₀·I/(2π·r), so with the current and with one over the height (Ampère's law). The demo's: 100 mV at 150 mm over 1 A; a test set of 1.2 A.</summary>
    [Theory]
    [InlineData("", 0, 0.150, 0.120)]
    [InlineData("hangs high", 0.15, 0.300, 0.060)]
    [InlineData("hangs low", 0.05, 0.100, 0.180)]
    [InlineData("hangs low", 0.50, -0.350, 1.800)] // on the rail: no more than at 1 cm
    [InlineData("open", 0, 0.150, 0)]
    public void Pickup_OverTheTestSet_HearsByCurrentAndHeight(string fault, double by, double height, double volts)
    {
        using Rig rig = new(Books.Curlew, "standing with air");
        if (fault.Length > 0)
        {
            rig.Break(0.5, "right pickup", fault, ("by", by));
        }

        Assert.Equal(0, rig.At(1, "signal of right pickup"));
        rig.Do(2, "cab signal test set", "code 180");
        Assert.Equal(height, rig.At(3, "height over rail of right pickup"), 1e-12);
        Assert.Equal(volts, rig.At(3, "signal of right pickup"), 1e-12);
        Assert.Equal(0.120, rig.At(3, "signal of left pickup"), 1e-12);
    }

    /// <summary>Codes of 75, 120 and 180 a minute and what they mean: common practice, no source. A sender without its code, or dead, leaves restricting.</summary>
    [Theory]
    [InlineData("code 180", "", 4)]
    [InlineData("code 120", "", 3)]
    [InlineData("code 75", "", 2)]
    [InlineData("off", "", 1)]
    [InlineData("code 180", "no code", 1)]
    [InlineData("code 180", "dead", 1)]
    public void CabSignal_ByCode_ShowsItsAspect(string code, string fault, double shows)
    {
        using Rig rig = new(Books.Curlew, "standing with air");
        if (fault.Length > 0)
        {
            rig.Break(1, "test code", fault);
        }

        rig.Do(2, "cab signal test set", code);
        Assert.Equal(shows, rig.Reads(4, "cab signal"));
    }

    [Fact]
    public void CabSignal_CutOut_IsDarkAndAsksForNothing()
    {
        using Rig rig = new(Books.Curlew, "under clear signals");
        Assert.Equal(4, rig.Reads(2, "cab signal"));
        rig.Do(3, "cab signal cut-out", "out");
        Assert.Equal(0, rig.Reads(4, "cab signal"));
        rig.Do(5, "code of the track", "no code");
        Assert.True(rig.At(30, "picked up of cab signal enforcement") < 0);
    }

    /// <summary>A penalty comes at most 8 s after the change: 49 CFR 236.563, from memory.</summary>
    [Fact]
    public void Change_WithoutAnswer_BringsHornAndPenaltyWithinEightSeconds()
    {
        using Rig rig = new(Books.Curlew, "under clear signals");
        Assert.True(rig.At(4, w => w.Value(rig.Plan.Signs["the cab signal horn is heard"])) < 0);
        rig.Do(5, "code of the track", "no code");
        Assert.True(rig.At(6.5, w => w.Value(rig.Plan.Signs["the cab signal horn is heard"])) >= 0);
        Assert.True(rig.At(10, "picked up of penalty relay") < 0);
        Assert.True(rig.At(13, "picked up of penalty relay") >= 0);
    }

    [Fact]
    public void Change_Answered_BringsNone()
    {
        using Rig rig = new(Books.Curlew, "under clear signals");
        rig.Do(5, "code of the track", "code 75");
        rig.Do(8, "acknowledging pedal", "pressed");
        rig.Do(9, "acknowledging pedal", "up");
        Assert.True(rig.At(10, w => w.Value(rig.Plan.Signs["the cab signal horn is heard"])) < 0);
        Assert.True(rig.At(40, "picked up of penalty relay") < 0);
        rig.Do(41, "code of the track", "no code"); // worse again, and nobody answers
        Assert.True(rig.At(50, "picked up of penalty relay") >= 0);
    }

    /// <summary>A pedal that is tied down answers nothing: common practice, no source.</summary>
    [Fact]
    public void Change_PedalHeldDown_BringsThePenalty()
    {
        using Rig rig = new(Books.Curlew, "under clear signals");
        rig.Do(1, "acknowledging pedal", "pressed");
        rig.Do(10, "code of the track", "code 120");
        Assert.True(rig.At(20, "picked up of penalty relay") >= 0);
    }

    [Fact]
    public void Change_ForTheBetter_SoundsNothing()
    {
        using Rig rig = new(Books.Curlew, "under clear signals");
        rig.Do(5, "code of the track", "code 75");
        rig.Do(6, "acknowledging pedal", "pressed");
        rig.Do(7, "acknowledging pedal", "up");
        rig.Do(10, "code of the track", "code 120");
        rig.Do(15, "code of the track", "code 180");
        double heard = -1;
        foreach (double at in new[] { 10.2, 10.8, 11.5, 14.0, 15.2, 15.8, 17.0, 40.0 })
        {
            heard = Math.Max(heard, rig.At(at, w => w.Value(rig.Plan.Signs["the cab signal horn is heard"])));
        }

        Assert.True(heard < 0);
        Assert.True(rig.At(41, "picked up of penalty relay") < 0);
    }

    /// <summary>The penalty sets the brakes: the equalising reservoir empties.</summary>
    [Fact]
    public void Penalty_OfTheCabSignal_SetsTheBrakes()
    {
        using Rig rig = new(Books.Curlew, "under clear signals");
        double before = rig.At(4, "pressure of brake pipe");
        rig.Do(5, "code of the track", "no code");
        Assert.True(rig.At(60, "pressure of brake pipe") < before - 150_000);
        Assert.True(rig.At(60, w => w.Value(rig.Plan.Facts["brakes of both trucks are set"])) >= 0);
    }
}
