using Sightglass.World.Tests.Trade;

namespace Sightglass.World.Tests.Electric;

/// <summary>Which unit answers which command. Where no other source is named: common practice, no source.</summary>
public sealed class CoupledUnitsTests
{
    private const string Jumper = "control jumper at the rear";

    /// <summary>Each notch over its wires sets both engines to it, and steps of speed are alike: 0, 0, 1 … 7 for idle, 1 … 8. Source: A3-12, from memory.</summary>
    [Fact]
    public void Throttle_A3_12EveryNotch_BothUnitsAnswer()
    {
        using Rig rig = new(CoupledUnits.Plan, "coupled");
        foreach ((int i, string notch) in new[] { "notch 1", "notch 2", "notch 3", "notch 4", "notch 5", "notch 6", "notch 7", "notch 8", "idle", "stop" }.Index())
        {
            rig.Do(1 + (2 * i), "throttle", notch);
            // The first notch has the wires of idle and the field besides.
            string stands = notch == "notch 1" ? "idle" : notch;
            Assert.True(rig.At(2 + (2 * i), $"{stands} of decoder") >= 0, notch);
            Assert.True(rig.At(2.5 + (2 * i), $"{stands} of decoder of unit 2") >= 0, notch);
            Assert.Equal(notch is not ("idle" or "stop"), rig.At(2.7 + (2 * i), "picked up of field relay of unit 2") >= 0);
        }
    }

    /// <summary>A unit that is turned runs the same way along the track: its reverse relay picks up.</summary>
    [Fact]
    public void Reverser_UnitIsTurned_RunsTheSameWayAlongTheTrack()
    {
        using Rig rig = new(CoupledUnits.Plan, "coupled");
        rig.Do(1, "reverser", "forward");
        Assert.True(rig.At(2, "picked up of forward relay") >= 0);
        Assert.True(rig.At(3, "picked up of reverse relay of unit 2") >= 0);
        Assert.True(rig.At(4, "picked up of forward relay of unit 2") < 0);
        rig.Break(5, Jumper, "crossed pins", ("pin", 8), ("other", 9));
        Assert.True(rig.At(6, "picked up of forward relay of unit 2") >= 0);
    }

    /// <summary>Trade 16: the engine-run wire open, the unit stays at idle; the generator-field wire open, it revs without load.</summary>
    [Fact]
    public void Unit_Trade16RunOrFieldOpen_StaysAtIdleOrRevsWithoutLoad()
    {
        using Rig run = new(CoupledUnits.Plan, "coupled");
        run.Break(1, Jumper, "open pin", ("pin", 16));
        run.Do(2, "throttle", "notch 8");
        Assert.True(run.At(3, "notch 8 of decoder") >= 0);
        Assert.True(run.At(4, "idle of decoder of unit 2") >= 0);
        Assert.Equal(20.0 / 3600 / 1000, run.At(60, "consumption of engine of unit 2"), 1e-9);
        using Rig field = new(CoupledUnits.Plan, "coupled");
        field.Break(1, Jumper, "open pin", ("pin", 6));
        field.Do(2, "throttle", "notch 8");
        Assert.True(field.At(3, "notch 8 of decoder of unit 2") >= 0);
        Assert.True(field.At(4, "picked up of field relay of unit 2") < 0);
        Assert.True(field.At(5, "picked up of field relay") >= 0);
    }

    /// <summary>An open negative: with the battery of the unit still tied to it the coils have another way back; the wires of one notch reach others through them, and what answers is another notch or none.</summary>
    [Fact]
    public void Negative_Open_CoilsFeedEachOther()
    {
        using Rig rig = new(CoupledUnits.Plan, "coupled");
        rig.Do(1, "throttle", "notch 2");
        double whole = rig.At(2, "voltage of governor A of unit 2") - rig.At(2, "voltage of minus of unit 2");
        rig.Break(3, Jumper, "open pin", ("pin", 4));
        double left = rig.At(4, "voltage of governor A of unit 2") - rig.At(4, "voltage of minus of unit 2");
        Assert.InRange(left, 0.3 * whole, 0.9 * whole);
        Assert.InRange(rig.At(5, "voltage of minus of unit 2") - rig.At(5, "voltage of minus"), 5, 50);
    }

    [Fact]
    public void Jumper_Parted_UnitFallsToIdle()
    {
        using Rig rig = new(CoupledUnits.Plan, "coupled");
        rig.Do(1, "throttle", "notch 6");
        Assert.True(rig.At(2, "notch 6 of decoder of unit 2") >= 0);
        rig.Do(3, Jumper, "parted");
        Assert.True(rig.At(4, "idle of decoder of unit 2") >= 0);
        Assert.True(rig.At(5, "notch 6 of decoder") >= 0);
    }

    /// <summary>Two wires that touch bring each other on: notch 3 (C alone) becomes 4 (A and C) for both units.</summary>
    [Fact]
    public void Pins_Shorted_AnotherNotchAnswers()
    {
        using Rig rig = new(CoupledUnits.Plan, "coupled");
        rig.Break(1, Jumper, "shorted pins", ("pin", 7), ("other", 15));
        rig.Do(2, "throttle", "notch 3");
        Assert.True(rig.At(3, "notch 4 of decoder of unit 2") >= 0);
        Assert.True(rig.At(4, "notch 4 of decoder") >= 0);
    }
}
