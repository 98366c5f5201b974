using Sightglass.World.Tests.Trade;

namespace Sightglass.World.Tests.Electric;

/// <summary>What answers the control line of the demo, in two machines back to back. Where no other source is named: common practice, no source.</summary>
public sealed class DemoUnitTests
{
    private const string Pair = "double-headed express, charged";
    private const string Jumper = "control line jumper at the rear";

    /// <summary>Propulsion, sanders and power brakes of each unit respond to the cab that controls. Source: 49 CFR 229.13.</summary>
    [Fact]
    public void Units_CFR010_EachRespondsToTheControllingCab()
    {
        using Rig rig = DemoTrains.At(Pair);
        rig.Do(1, "reverser", "ahead");
        rig.Do(2, "throttle", "notch 4");
        Assert.True(rig.Holds(3, "notch 4 of governor"));
        Assert.True(rig.Holds(4, "notch 4 of governor of unit 2"));
        Assert.True(rig.Holds(5, "picked up of generator field relay of unit 2"));
        rig.Do(6, "sand switch", "on");
        Assert.True(rig.Holds(7, "sand is seen to run at the front truck"));
        // Turned, it runs backward and sands before its rear truck.
        Assert.True(rig.Holds(8, "sand is seen to run at the rear truck of unit 2"));
        Assert.False(rig.Holds(9, "sand is seen to run at the front truck of unit 2"));
        rig.Do(10, "sand switch", "off");
        rig.Do(11, "throttle", "idle");
        rig.Do(12, "automatic brake handle", "full service");
        Assert.True(rig.Holds(100, "applied of front brake cylinders"));
        Assert.True(rig.Holds(101, "applied of front brake cylinders of unit 2"));
    }

    /// <summary>Sand ahead of the wheels that lead, whichever way the machine runs. Source: 49 CFR 229.131(a).</summary>
    [Theory]
    [InlineData("ahead", "front", "rear")]
    [InlineData("centred", "front", "rear")]
    [InlineData("reverse", "rear", "front")]
    public void Sand_CFR129Reverser_SaysWhichTruckGivesIt(string reverser, string gives, string givesNot)
    {
        using Rig rig = DemoTrains.At(Pair);
        rig.Do(1, "reverser", reverser);
        rig.Do(2, "sand switch", "on");
        Assert.True(rig.Holds(3, $"sand is seen to run at the {gives} truck"));
        Assert.False(rig.Holds(4, $"sand is seen to run at the {givesNot} truck"));
        rig.Do(5, "sander cutout cock", "closed");
        Assert.False(rig.Holds(60, $"sand is seen to run at the {gives} truck"));
    }

    /// <summary>Trade 16: the engine-run wire open, the second unit stays at idle; the generator-field wire open, it revs without load; the sand wire open, it gives no sand.</summary>
    [Fact]
    public void Unit_Trade16WireOpen_DoesNotAnswerInThatAlone()
    {
        using Rig rig = DemoTrains.At(Pair);
        rig.Do(1, "throttle", "notch 8");
        rig.Break(2, Jumper, "open pin", ("pin", 16));
        Assert.True(rig.Holds(3, "idle of governor of unit 2"));
        Assert.True(rig.Holds(4, "notch 8 of governor"));
        rig.Mend(5, Jumper, "open pin");
        rig.Break(6, Jumper, "open pin", ("pin", 6));
        Assert.True(rig.Holds(7, "notch 8 of governor of unit 2"));
        Assert.False(rig.Holds(8, "picked up of generator field relay of unit 2"));
        rig.Mend(9, Jumper, "open pin");
        rig.Break(10, Jumper, "open pin", ("pin", 23));
        rig.Do(11, "sand switch", "on");
        Assert.True(rig.Holds(12, "picked up of front sand magnet"));
        Assert.False(rig.Holds(13, "picked up of front sand magnet of unit 2"));
    }

    /// <summary>Trade 19: an axle of the second unit is locked. The light stays lit in both cabs, the lamp of that unit says where; neither idle nor isolating frees it. Standing, nothing turns unlike.</summary>
    [Fact]
    public void Slip_Trade19LockedAxle_LightStaysLitWhateverIsCutOut()
    {
        using Rig rig = DemoTrains.At(Pair);
        rig.Goes(1, 30);
        rig.Do(2, "throttle", "notch 3");
        Assert.False(rig.Holds(3, "lit of wheel slip light"));
        rig.Break(4, "third axle of unit 2", "locked");
        Assert.True(rig.Holds(5, "lit of wheel slip light"));
        Assert.True(rig.Holds(6, "lit of wheel slip light of unit 2"));
        Assert.True(rig.Holds(7, "lit of own slip lamp of unit 2"));
        Assert.False(rig.Holds(8, "lit of own slip lamp"));
        rig.Do(9, "throttle", "idle");
        rig.Do(10, "isolation switch of unit 2", "isolated");
        Assert.True(rig.Holds(11, "lit of wheel slip light"));
        Assert.True(rig.Holds(12, "an axle of this unit is dragged of unit 2"));
        rig.Goes(13, 0);
        Assert.False(rig.Holds(14, "lit of wheel slip light"));
    }

    /// <summary>A ground in the second unit drops its load and rings in both; reset at idle it is quiet, and comes back with the first notch. Isolated, the bell is silent and its lamp is not.</summary>
    [Fact]
    public void GroundRelay_GroundInTheSecondUnit_RingsInBothAndComesBack()
    {
        using Rig rig = DemoTrains.At(Pair);
        rig.Break(1, "traction circuit of unit 2", "grounded", ("resistance", 10));
        Assert.False(rig.Holds(2, "the alarm bell is heard"));
        rig.Do(3, "throttle", "notch 1");
        Assert.True(rig.Holds(4, "the alarm bell is heard"));
        Assert.True(rig.Holds(5, "lit of ground relay lamp of unit 2"));
        Assert.False(rig.Holds(6, "lit of ground relay lamp"));
        Assert.False(rig.Holds(7, "picked up of generator field relay of unit 2"));
        Assert.True(rig.Holds(8, "picked up of generator field relay"));
        rig.Do(9, "throttle", "idle");
        Assert.True(rig.Holds(10, "the alarm bell is heard"));
        rig.Do(11, "ground reset button", "pushed");
        rig.Do(12, "ground reset button", "rest");
        Assert.False(rig.Holds(13, "the alarm bell is heard"));
        rig.Do(14, "throttle", "notch 1");
        Assert.True(rig.Holds(15, "the alarm bell is heard"));
        rig.Do(16, "isolation switch of unit 2", "isolated");
        Assert.False(rig.Holds(17, "the alarm bell is heard"));
        Assert.True(rig.Holds(18, "lit of ground relay lamp of unit 2"));
    }

    [Fact]
    public void AlarmBell_SecondUnitDoesNotCharge_RingsInTheFirst()
    {
        using Rig rig = DemoTrains.At(Pair);
        Assert.False(rig.Holds(1, "the alarm bell is heard"));
        rig.Break(2, "auxiliary generator of unit 2", "open");
        Assert.True(rig.Holds(1800, "the alarm bell is heard"));
        Assert.True(rig.Holds(1801, "lit of no charge lamp of unit 2"));
        Assert.False(rig.Holds(1802, "lit of no charge lamp"));
        rig.Break(1803, Jumper, "open pin", ("pin", 2));
        Assert.False(rig.Holds(1804, "the alarm bell is heard"));
        Assert.True(rig.Holds(1805, "the alarm bell is heard of unit 2"));
    }

    [Fact]
    public void DynamicBrake_SetUp_EachUnitSaysSo()
    {
        using Rig rig = DemoTrains.At(Pair);
        rig.Do(1, "throttle", "notch 1");
        rig.Do(2, "dynamic brake handle", "set up");
        Assert.False(rig.Holds(3, "set up of dynamic brake handle"));
        rig.Do(4, "throttle", "idle");
        rig.Do(5, "dynamic brake handle", "set up");
        Assert.True(rig.Holds(6, "lit of dynamic brake lamp of unit 2"));
        rig.Break(7, "dynamic brake relay of unit 2", "open coil");
        Assert.False(rig.Holds(8, "lit of dynamic brake lamp of unit 2"));
        Assert.True(rig.Holds(9, "lit of dynamic brake lamp"));
    }
}
