using Sightglass.Basics.Time;
using Sightglass.Plant.Plans;
using Sightglass.World.Journal;
using Sightglass.World.People;
using Sightglass.World.Runs;
using Sightglass.World.Snapshots;
using Sightglass.World.Tests.Trade;

namespace Sightglass.World.Tests.People;

/// <summary>Doors and ladders that nobody gets by. Expected: arithmetic with the times of the legs, an ordinary pace, and 5 s to try a door (<see cref="HumanTimes.TriesDoor"/>).</summary>
public sealed class GateTests
{
    private const string Body = """
        book: Gates
        length: 20 m
        width: 3 m
        roles: { hand: { walks: 1.3 m/s, reacts in: 1 s }, mate: { walks: 1.3 m/s, reacts in: 1 s } }
        places:
          yard: { x: 4 m, y: 2.4 m }
          hall: { x: 4 m, y: 0 m, z: 1 m }
          cab: { x: 6 m, y: 0 m, z: 1 m }
          loft: { x: 6 m, y: 0 m, z: 3 m }
        legs:
          - { from: yard, to: hall, takes: 10 s, through: [steps, front door] }
          - { from: hall, to: cab, takes: 6 s, through: [inner door] }
          - { from: yard, to: cab, takes: 30 s, through: [ladder] }
          - { from: cab, to: loft, takes: 5 s, through: [hatch] }
        systems: { air: { medium: brake, alive: yes } }
        items:
          receiver: { kind: reservoir, system: air, volume: 1 m^3, start pressure: 100 psi }
          loft cock: { kind: hand valve, system: air, from: receiver, to: outside, diameter: 2 mm, who: [mate], takes: 4 s, places: [loft] }
          steps: { kind: passage, places: [yard] }
          front door: { kind: passage, places: [yard, hall] }
          inner door: { kind: handle, positions: [shut, open], who: [hand], takes: 1 s, places: [hall, cab] }
          ladder: { kind: passage, places: [yard] }
          hatch: { kind: passage, places: [cab] }
        hazards:
          a hot floor: { places: [hall], protection: leave, when: pressure of receiver > 1 psi, warning: It burns. }
        protections: { leave: { asked of: mate, text: Cooled. } }
        facts: { it stands: { is: pressure of receiver > 1 psi } }
        situations:
          calm: { people: [ { role: hand, at: [yard] }, { role: mate, at: [yard] } ] }

        """;

    private const string Climb = """
        Card: Climb
        For: hand
        Done when: it stands.
        1. Go to the loft.

        """;

    private const string Send = """
        Card: Send
        For: hand
        Done when: it stands.
        1. Ask the mate to open the loft cock. Wait for the answer, at most 5 min. If not, stop: it stays shut.

        """;

    private static readonly Plan s_plan = Rig.Compile(Body.Replace("protection: leave, when: pressure of receiver > 1 psi, warning: It burns.", "when: pressure of receiver > 1 psi, caution: It is warm.", StringComparison.Ordinal), Climb, Send);

    private static readonly Plan s_hot = Rig.Compile(Body);

    /// <summary>yard, hall, cab: 10 + 6 s, and what is shut: the front door is tried in the yard, 5 + 30 s; the inner one in the hall, 10 + 5 s, and back, 10 + 30 s.</summary>
    [Theory]
    [InlineData(null, null, 16)]
    [InlineData("ladder", null, 16)]
    [InlineData("steps", null, 5 + 30)]
    [InlineData("front door", null, 5 + 30)]
    [InlineData("front door", "steps", 5 + 30)]
    [InlineData("inner door", null, 10 + 5 + 10 + 30)]
    public void Walk_PastWhatIsShut_GoesRound(string? one, string? other, double seconds)
    {
        using Rig rig = new(s_plan, "calm");
        foreach (string item in new[] { one, other }.OfType<string>())
        {
            rig.Break(0, item, FaultOf(item));
        }

        rig.World.Do(new WorldAction.Walk(0, "cab"), SimTime.FromSeconds(1));
        Arrives(rig, "cab", 1 + seconds);
        Assert.Equal((seconds - (one is null or "ladder" ? 0 : 5)) * WayTable.OrdinaryPace, rig.World.People[0].Walked, 1e-9);
    }

    /// <summary>Nobody is kept from a door that is stuck open.</summary>
    [Fact]
    public void Walk_ThroughADoorThatIsStuckOpen_GetsThrough()
    {
        using Rig rig = new(s_plan, "calm");
        rig.Do(0.5, "inner door", "open");
        rig.Break(0.75, "inner door", "stuck");
        rig.World.Do(new WorldAction.Walk(0, "cab"), SimTime.FromSeconds(1));
        Arrives(rig, "cab", 17);
    }

    /// <summary>On the way since 1 s and in the hall at 11 s: what is shut before that is met there, what is shut after that was passed.</summary>
    [Theory]
    [InlineData("inner door", 5, 1 + 10 + 5 + 10 + 30)]
    [InlineData("inner door", 12, 17)]
    [InlineData("front door", 5, 17)]
    public void Walk_SomethingIsShutOnTheWay_IsMetWhereItIsAhead(string item, double at, double arrives)
    {
        using Rig rig = new(s_plan, "calm");
        rig.World.Do(new WorldAction.Walk(0, "cab"), SimTime.FromSeconds(1));
        rig.Break(at, item, FaultOf(item));
        rig.World.RunTo(SimTime.FromSeconds(at + 1));
        Assert.Equal("cab", rig.Plan.Ways.Places[rig.World.People[0].Towards].Name); // they know of nothing yet
        Arrives(rig, "cab", arrives);
    }

    /// <summary>It is mended before they come to it: 10 s, no trying, and on.</summary>
    [Fact]
    public void Walk_WhatIsMendedInTime_IsGoneBy()
    {
        using Rig rig = new(s_plan, "calm");
        rig.Break(0, "inner door", "stuck");
        rig.World.Do(new WorldAction.Walk(0, "cab"), SimTime.FromSeconds(1));
        rig.Mend(6, "inner door", "stuck");
        Arrives(rig, "cab", 17);
        Assert.Empty(rig.World.People[0].Ways.Shut);
    }

    [Fact]
    public void Walk_NoOtherWay_StandsThereAndKnows()
    {
        using Rig rig = new(s_plan, "calm");
        rig.Break(0, "hatch", "cannot be used");
        Assert.Equal(Hindrance.None, rig.World.HindranceOf(new WorldAction.Walk(0, "loft"))); // nobody knows it from afar
        rig.World.Do(new WorldAction.Walk(0, "loft"), SimTime.FromSeconds(1));
        rig.World.RunTo(SimTime.FromSeconds(18));
        Person hand = rig.World.People[0];
        Assert.Equal("cab", rig.World.PlaceOf(hand));
        Assert.Equal("loft", rig.Plan.Ways.Places[hand.Missed].Name);
        Assert.Equal(Hindrance.NoWay, rig.World.HindranceOf(new WorldAction.Walk(0, "loft")));
        Assert.Equal(Hindrance.None, rig.World.HindranceOf(new WorldAction.Walk(1, "loft")));
        Assert.Equal(["Hand goes to loft.", "Hand comes to hatch and does not get by it.", "Hand finds no other way to loft."], rig.World.Journal!.Where(j => j.Kind is JournalKind.Deed or JournalKind.Finding).Select(j => j.Text));
        rig.Mend(20, "hatch", "cannot be used");
        rig.World.Do(new WorldAction.Walk(0, "loft"), SimTime.FromSeconds(21));
        Arrives(rig, "loft", 26);
        Assert.Equal(-1, hand.Missed);
    }

    /// <summary>Before the door, at it, and on the way round, which is known by then.</summary>
    [Theory]
    [InlineData(4)]
    [InlineData(13)]
    [InlineData(30)]
    public void Restore_OnAWayRound_GoesOnAlike(double at)
    {
        using Rig rig = new(s_plan, "calm");
        rig.World.Do(new WorldAction.Walk(0, "cab"), SimTime.FromSeconds(1));
        rig.Break(3, "inner door", "stuck");
        rig.World.RunTo(SimTime.FromSeconds(at));
        string kept = rig.World.Save().ToJson();
        using Rig other = new(s_plan, "calm");
        other.World.Restore(WorldSnapshot.FromJson(kept));
        Arrives(other, "cab", 56);
        Arrives(rig, "cab", 56);
        Assert.Equal(rig.World.People[0].Ways.Shut, other.World.People[0].Ways.Shut);
        Assert.Equal(rig.World.Hash, other.World.Hash);
        Assert.Equal(rig.World.People[0].Walked, other.World.People[0].Walked);
    }

    /// <summary>Who would have passed the hall comes to stand in it: its floor is met on arrival, at 11 s, not half-way before it.</summary>
    [Fact]
    public void Walk_HeldUpWhereItInjures_IsMetOnArrival()
    {
        using Rig rig = new(s_hot, "calm");
        rig.World.Do(new WorldAction.Walk(0, "cab"), SimTime.FromSeconds(1));
        rig.Break(3, "inner door", "stuck");
        rig.World.RunTo(SimTime.FromSeconds(10.9));
        Assert.DoesNotContain(rig.World.Journal!, j => j.Kind == JournalKind.Hazard);
        rig.World.RunTo(SimTime.FromSeconds(11.1));
        Assert.Contains(rig.World.Journal!, j => j.Kind == JournalKind.Hazard);
    }

    [Theory]
    [InlineData("Climb", OutcomeKind.Failed, "there is no way to loft")]
    [InlineData("Send", OutcomeKind.Stopped, "it stays shut")]
    public void Card_NoWay_IsNotDone(string title, OutcomeKind ended, string mechanism)
    {
        Assert.Equal(OutcomeKind.Done, RunOf(title, null).Kind);
        Outcome outcome = RunOf(title, "hatch");
        Assert.Equal((ended, mechanism), (outcome.Kind, outcome.Mechanism));
    }

    /// <summary>Finding out what somebody found out before takes no memory.</summary>
    [Fact]
    public void Walk_RoundWhatIsShut_AllocatesNothing()
    {
        using Rig rig = new(s_plan, "calm");
        rig.World.Journal = null;
        rig.Break(0, "inner door", "stuck");
        rig.World.Do(new WorldAction.Walk(0, "cab"), SimTime.FromSeconds(1));
        rig.World.Do(new WorldAction.Walk(1, "cab"), SimTime.FromSeconds(101));
        rig.World.Do(new WorldAction.Walk(0, "hall"), SimTime.FromSeconds(102));
        rig.World.RunTo(SimTime.FromSeconds(100));
        long before = GC.GetAllocatedBytesForCurrentThread();
        rig.World.RunTo(SimTime.FromSeconds(300));
        Assert.Equal(0, GC.GetAllocatedBytesForCurrentThread() - before);
        Assert.Equal("cab", rig.World.PlaceOf(rig.World.People[1]));
        Assert.Equal("hall", rig.World.PlaceOf(rig.World.People[0]));
    }

    private static string FaultOf(string item) => item == "inner door" ? "stuck" : "cannot be used";

    private static Outcome RunOf(string title, string? shut)
    {
        using Rig rig = new(s_plan, "calm");
        if (shut is not null)
        {
            rig.Break(0, shut, "cannot be used");
        }

        CardRun run = Rig.RunOf(s_plan, title);
        rig.World.Begin(run);
        rig.World.RunTo(SimTime.FromSeconds(600));
        return run.Outcome;
    }

    private static void Arrives(Rig rig, string place, double seconds)
    {
        rig.World.RunTo(SimTime.FromSeconds(seconds - 0.01));
        Assert.Null(rig.World.PlaceOf(rig.World.People[0]));
        rig.World.RunTo(SimTime.FromSeconds(seconds + 0.01));
        Assert.Equal(place, rig.World.PlaceOf(rig.World.People[0]));
    }
}
