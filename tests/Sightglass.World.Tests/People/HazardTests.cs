using Sightglass.Basics.Time;
using Sightglass.World.Journal;
using Sightglass.World.Runs;
using Sightglass.World.Snapshots;
using Sightglass.World.Tests.Trade;

namespace Sightglass.World.Tests.People;

/// <summary>Dangers injure whoever meets them without the protection they need; what is only a caution is told.</summary>
public sealed class HazardTests
{
    private const string Asked = """
        protections:
          cover: { asked of: mate, text: Somebody watches. }
        hazards:
          the pit: { places: [panel], protection: cover, warning: "A pit. You can fall. Have somebody watch." }
        """;

    private const string Ask = "Ask the mate for cover. Wait for the answer, at most 5 min. If not, stop.";

    private const string Set = """
        protections:
          chock: { chocks: [throttle], text: A chock. }
          flags: { set at: [panel, cab], text: Flags. }
          lock: { locks: [supply valve B], text: A lock. }
        hazards:
          rolling: { items: [supply valve A], bites: touching, protection: chock, warning: "It rolls. It can crush you. Chock it." }
          passing: { items: [supply valve C], bites: touching, protection: flags, warning: "It is passed. You can be crushed. Set flags." }
          spray: { items: [return valve B], bites: touching, protection: lock, warning: "It sprays. You can be burned. Lock it." }
        """;

    [Theory]
    [InlineData("the pit, without protection", "Go to the panel.")]
    [InlineData("the pit, without protection", Ask, "Go to the panel.", "Give back cover.")]
    [InlineData("protection was not given back: cover", Ask, "Go to the panel.")]
    [InlineData("", Ask, "Go to the panel.", "Go to the cab.", "Give back cover.")]
    public void Run_PlaceThatNeedsProtection_IsAsNamed(string mechanism, params string[] steps) => Check(Asked, mechanism, steps);

    [Theory]
    [InlineData("rolling, without protection", "Go to the panel.", "Open supply valve A.")]
    [InlineData("", "Chock the throttle.", "Go to the panel.", "Open supply valve A.")]
    [InlineData("", "Mate: Chock the throttle.", "Go to the panel.", "Open supply valve A.")]
    [InlineData("rolling, without protection", "Chock the throttle.", "Remove the chock from the throttle.", "Go to the panel.", "Open supply valve A.")]
    [InlineData("chock was removed by somebody who had not set it", "Chock the throttle.", "Mate: Remove the chock from the throttle.")]
    [InlineData("passing, without protection", "Set flags at the cab.", "Go to the panel.", "Close supply valve C.")]
    [InlineData("", "Set flags at the cab.", "Go to the panel.", "Set flags at the panel.", "Open supply valve C.")]
    [InlineData("", "Go to the panel.", "Lock and tag supply valve B.", "Open return valve B.")]
    [InlineData("spray, without protection", "Mate: Go to the panel.", "Mate: Lock and tag supply valve B.", "Go to the panel.", "Open return valve B.")]
    [InlineData("supply valve B is locked and tagged", "Go to the panel.", "Lock and tag supply valve B.", "Open supply valve B.")]
    [InlineData("", "Go to the panel.", "Lock and tag supply valve B.", "Remove the lock and tag from supply valve B.", "Open supply valve B.")]
    [InlineData("lock was removed by somebody who had not set it", "Go to the panel.", "Mate: Go to the panel.", "Mate: Lock and tag supply valve B.", "Remove the lock and tag from supply valve B.")]
    public void Run_WhatIsSet_ProtectsWhomItShould(string mechanism, params string[] steps) => Check(Set, mechanism, steps);

    /// <summary>The level sinks while somebody stands beside: the moment is that of the crossing, as seen by sampling.</summary>
    [Fact]
    public void Run_HazardBeginsToBiteWhereOneStands_FailsAtThatMoment()
    {
        const string Sinking = "hazards:\n  fumes: { places: [panel], when: volume of compartment C < 1195 L, danger: \"Fumes. They kill. Leave.\" }\n";
        using Rig rig = new(Card.Plan(Sinking, "Go to the panel.", "Wait 10 h."), "standing");
        World world = Card.Run(rig);
        Assert.Equal((OutcomeKind.Failed, "fumes"), (world.Run!.Ended, world.Run.Mechanism));
        double ended = world.Run.EndedAt.Seconds;
        using Rig other = new(Card.Plan(Sinking, "Go to the panel.", "Wait 10 h."), "standing");
        Assert.True(other.At(ended - 0.01, "volume of compartment C") > 1.195);
        Assert.True(other.At(ended + 0.01, "volume of compartment C") < 1.195);
        Assert.Contains("A hazard bites the hand: fumes. Fumes. They kill. Leave.", world.Journal!.Single(j => j.Kind == JournalKind.Hazard).Text, StringComparison.Ordinal);
    }

    [Fact]
    public void Run_OnlyACaution_IsToldAndTheCardGoesOn()
    {
        const string Slippery = "hazards:\n  wet ground: { places: [panel], when: volume of compartment C > 1 L, caution: \"Wet. You can fall. Step on ties.\" }\n";
        using Rig rig = new(Card.Plan(Slippery, "Go to the panel.", "Read sight glass A as P.", "Go to the cab."), "standing");
        World world = Card.Run(rig);
        Assert.Equal(OutcomeKind.Done, world.Run!.Ended);
        Assert.Equal("A hazard for the hand: wet ground. Wet. You can fall. Step on ties.", world.Journal!.Single(j => j.Kind == JournalKind.Hazard).Text);
    }

    [Fact]
    public void Do_LiveSessionWithoutACard_TellsInTheJournal()
    {
        using Rig rig = new(Card.Plan(Asked, "Wait 1 s."), "standing");
        rig.World.Do(new WorldAction.Walk(0, "panel"), SimTime.FromSeconds(1));
        rig.World.RunTo(SimTime.FromSeconds(60));
        Assert.Contains("the pit, without protection", Assert.Single(rig.World.Journal!, j => j.Kind == JournalKind.Hazard).Text, StringComparison.Ordinal);
    }

    /// <summary>Saved while a hazard is watched, a lock hangs and two work at the same time: goes on as if nothing had been.</summary>
    [Fact]
    public void Restore_InTheMidstOfIt_EndsTheSame()
    {
        const string Both = "protections:\n  lock: { locks: [supply valve B], text: A lock. }\nhazards:\n  fumes: { places: [panel], when: volume of compartment C < 1195 L, danger: \"Fumes. They kill. Leave.\" }\n";
        string[] steps = ["Go to the panel.", "Lock and tag supply valve B.", "At the same time:\n   - Hand: Wait 10 h.\n   - Mate: Wait 9 h."];
        using Rig whole = new(Card.Plan(Both, steps), "standing");
        Outcome expected = Card.Run(whole).Run!.Outcome;
        Assert.Equal("fumes", expected.Mechanism);
        using Rig first = new(Card.Plan(Both, steps), "standing");
        first.World.Begin(Rig.RunOf(first.Plan, "Work"));
        first.World.RunTo(SimTime.FromSeconds(300));
        string kept = first.World.Save().ToJson();
        using Rig second = new(Card.Plan(Both, steps), "standing");
        second.World.Restore(WorldSnapshot.FromJson(kept), Rig.RunOf(second.Plan, "Work"));
        Assert.Single(second.World.Guards);
        second.World.RunTo(SimTime.Never);
        Assert.Equal(expected, second.World.Run!.Outcome);
    }

    private static void Check(string sections, string mechanism, string[] steps)
    {
        using Rig rig = new(Card.Plan(sections, steps), "standing");
        World world = Card.Run(rig);
        Assert.Equal((mechanism.Length == 0 ? OutcomeKind.Done : OutcomeKind.Failed, mechanism), (world.Run!.Ended, world.Run.Mechanism));
    }
}
