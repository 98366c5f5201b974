using Sightglass.Plant.Plans;
using Sightglass.World.Tests.Trade;

namespace Sightglass.World.Tests.Electric;

/// <summary>A door, its two coils, its cut-out, its contact; an axle; a cover that joins three wires.</summary>
public sealed class DoorTests
{
    private const double MilePerHour = 0.44704;

    private const string Text = """
        book: Door
        length: 20 m
        width: 3 m
        places: { cab: { x: 5 m, y: 0 m } }
        roles: { hand: { walks: 1.3 m/s } }
        situations: { on: { people: [ { role: hand, at: cab } ] } }
        items:
          opening: { kind: switch, who: [hand], places: [cab] }
          shutting: { kind: switch, who: [hand], places: [cab] }
          cut-out: { kind: handle, positions: [in service, locked out], who: [hand], places: [cab], moves only while: closed of door }
          minus: { kind: wire }
          plus: { kind: wire }
          open wire: { kind: wire }
          close wire: { kind: wire }
          loop: { kind: wire }
          far loop: { kind: wire }
          third wire: { kind: wire }
          battery: { kind: battery, from: minus, to: plus, cells: 32, capacity: 100 Ah }
          open contact: { kind: contact, from: plus, to: open wire, closed while: on of opening }
          close contact: { kind: contact, from: plus, to: close wire, closed while: on of shutting }
          open magnet: { kind: contactor, from: open wire, to: minus, picks at: 40 V, drops at: 20 V }
          close magnet: { kind: contactor, from: close wire, to: minus, picks at: 40 V, drops at: 20 V }
          door: { kind: door, opened by: open magnet, closed by: close magnet, locked by: cut-out, moves only while: in service of cut-out, who: [hand], places: [cab] }
          falling door: { kind: door, opened by: open magnet, who: [hand], places: [cab] }
          hand door: { kind: door, who: [hand], places: [cab] }
          door contact: { kind: contact, from: plus, to: loop, closed while: closed of door }
          pass contact: { kind: contact, from: plus, to: loop, closed while: locked out of cut-out }
          plug: { kind: receptacle, pins: { 1: loop, 2: far loop, 3: third wire }, cover joins: [loop, far loop, third wire], who: [hand], places: [cab] }
          far relay: { kind: contactor, from: far loop, to: minus, picks at: 40 V, drops at: 20 V }
          third relay: { kind: contactor, from: third wire, to: minus, picks at: 40 V, drops at: 20 V }
          first axle: { kind: axle, places: [cab] }
          second axle: { kind: axle, places: [cab] }
        """;

    private static readonly Lazy<Plan> s_plan = new(() => Rig.Compile(Text));

    [Fact]
    public void Door_CoilPicksUpAndDrops_OpensAndStaysOpen()
    {
        using Rig rig = new(s_plan.Value, "on");
        Assert.True(Holds(rig, 1, "closed of door"));
        rig.Do(2, "opening", "on");
        Assert.True(Holds(rig, 3, "open of door"));
        Assert.True(Holds(rig, 4, "open of falling door"));
        rig.Do(5, "opening", "off");
        Assert.True(Holds(rig, 6, "open of door"));
        Assert.True(Holds(rig, 7, "closed of falling door"));
        rig.Do(8, "shutting", "on");
        Assert.True(Holds(rig, 9, "closed of door"));
        rig.Do(10, "opening", "on");
        Assert.True(Holds(rig, 11, "open of door"));
        rig.Do(12, "opening", "off");
        Assert.True(Holds(rig, 13, "closed of door"));
        Assert.True(Holds(rig, 14, "closed of hand door"));
    }

    [Fact]
    public void Door_LockedOut_ObeysNoWireAndItsContactIsPassed()
    {
        using Rig rig = new(s_plan.Value, "on");
        rig.Break(1, "door contact", "does not close");
        Assert.False(Holds(rig, 2, "picked up of far relay"));
        rig.Do(3, "cut-out", "locked out");
        Assert.True(Holds(rig, 4, "picked up of far relay"));
        rig.Do(5, "opening", "on");
        Assert.True(Holds(rig, 6, "closed of door"));
        rig.Do(7, "door", "open");
        Assert.True(Holds(rig, 8, "closed of door"));
        rig.Do(9, "cut-out", "in service");
        Assert.True(Holds(rig, 10, "open of door"));
        rig.Do(11, "cut-out", "locked out");
        Assert.True(Holds(rig, 12, "in service of cut-out"));
    }

    [Fact]
    public void Door_Stuck_StaysWhereItIs()
    {
        using Rig rig = new(s_plan.Value, "on");
        rig.Break(1, "door", "stuck");
        rig.Do(2, "opening", "on");
        Assert.True(Holds(rig, 3, "closed of door"));
        Assert.True(Holds(rig, 4, "open of falling door"));
    }

    /// <summary>One cover turns two loops round at once; open, both are dark.</summary>
    [Fact]
    public void Cover_JoinsThreeWires_ShutAllMeetOpenNone()
    {
        using Rig rig = new(s_plan.Value, "on");
        Assert.True(Holds(rig, 1, "picked up of far relay"));
        Assert.True(Holds(rig, 2, "picked up of third relay"));
        rig.Do(3, "plug", "open");
        Assert.False(Holds(rig, 4, "picked up of far relay"));
        Assert.False(Holds(rig, 5, "picked up of third relay"));
        rig.Do(6, "plug", "shut");
        rig.Break(7, "plug", "cover contact open");
        Assert.False(Holds(rig, 8, "picked up of third relay"));
    }

    [Fact]
    public void Axle_LockedOrSlipping_TurnsUnlikeTheOther()
    {
        using Rig rig = new(s_plan.Value, "on");
        rig.World.Do(new WorldAction.SetInput("speed", 30 * MilePerHour), Basics.Time.SimTime.FromSeconds(1));
        Assert.Equal(30 * MilePerHour, rig.At(2, "rim speed of first axle"), 1e-9);
        rig.Break(3, "first axle", "slips", ("share", 0.5));
        Assert.Equal(45 * MilePerHour, rig.At(4, "rim speed of first axle"), 1e-9);
        rig.Break(5, "second axle", "locked");
        Assert.Equal(0, rig.At(6, "rim speed of second axle"), 1e-9);
    }

    private static bool Holds(Rig rig, double at, string condition) => rig.At(at, condition) >= 0;
}
