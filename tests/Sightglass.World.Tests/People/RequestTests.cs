using Sightglass.Basics.Diagnostics;
using Sightglass.Basics.Time;
using Sightglass.Plant.Plans;
using Sightglass.World.Journal;
using Sightglass.World.Runs;
using Sightglass.World.Situations;
using Sightglass.World.Snapshots;
using Sightglass.World.Tests.Trade;

namespace Sightglass.World.Tests.People;

/// <summary>
/// Somebody is asked to operate a control. Times: 6 s to ask and 6 s to answer (common practice, no source), 2 s to react (the machine's own), and the
/// situation's delay before the question is attended to.
/// </summary>
public sealed class RequestTests
{
    private const string After30 = "    answers: { after: 30 s, unanswered: 0 % }\n";
    private const string Never = "    answers: { after: 30 s, unanswered: 100 % }\n";
    private const string Wait = "Wait for the answer, at most 5 min. If not, stop: not done.";
    private const string Full = $"Ask the mate to turn the throttle to full. {Wait}";

    [Fact]
    public void Ask_SomebodyAtTheControl_ReactsOperatesAndAnswers()
    {
        World world = Work(After30, Full);
        Assert.Equal((OutcomeKind.Done, 6.0 + 30 + 2 + 1 + 6), Ended(world));
        Assert.Equal("full", Position(world, "throttle"));
        Assert.Equal(
            ["39 The mate turned the throttle to full.", "45 You asked the mate to turn the throttle to full, and heard that it was done."],
            Told(world, JournalKind.Deed, JournalKind.Said));
    }

    [Fact]
    public void Ask_SomebodyElsewhere_WalksThereFirst()
    {
        World world = Work(After30, $"Ask the mate to open supply valve A. {Wait}");
        double walk = world.Plan.Ways.Seconds(world.Plan.Ways.IndexOf("cab"), world.Plan.Ways.IndexOf("panel"));
        Assert.True(walk > 0.1);
        Assert.Equal(6 + 30 + 2 + walk + 4 + 6, Ended(world).Seconds, 2e-3);
        Assert.Equal(world.Plan.Ways.IndexOf("panel"), world.People[1].Place);
        Assert.Equal("open", Position(world, "supply valve A"));
        Assert.Contains("The mate went to the panel.", string.Join('\n', Told(world, JournalKind.Deed)), StringComparison.Ordinal);
    }

    [Fact]
    public void Ask_NobodyHears_NothingIsDoneAndTheTimeRunsOut()
    {
        World world = Work(Never, Full);
        Assert.Equal((OutcomeKind.Stopped, 300.0), Ended(world));
        Assert.Equal("idle", Position(world, "throttle"));
        Assert.Equal(["300 You asked the mate to turn the throttle to full, and no answer came in time."], Told(world, JournalKind.Said));
    }

    /// <summary>Heard too late for whoever asked, and done all the same: 6 s + 30 s + 2 s + 1 s after the question.</summary>
    [Fact]
    public void Ask_AnswerTooLate_IsDoneAllTheSame()
    {
        World world = Work(
            After30, "Ask the mate to turn the throttle to full. Wait for the answer, at most 20 s. If not, wait 15 s.", "Check that the throttle is idle. If not, stop: early.", "Wait 5 s.",
            "Check that the throttle is full. If not, stop: never.");
        Assert.Equal((OutcomeKind.Done, 20.0 + 15 + 2 + 5 + 2), Ended(world));
    }

    [Theory]
    [InlineData("I may not operate it", "", "Mate: Ask the hand to turn the lamp switch to on.")]
    [InlineData("I have no permission to operate it", "", "Ask the mate to turn the heater switch to on.")]
    [InlineData("it is locked and tagged", "protections:\n  lock: { locks: [supply valve B], text: A lock. }\n", "Go to the panel.", "Lock and tag supply valve B.", "Ask the mate to open supply valve B.")]
    [InlineData("it is not safe to do", "protections:\n  chock: { chocks: [throttle], text: A chock. }\nhazards:\n  rolling: { items: [supply valve A], bites: touching, protection: chock, danger: \"It rolls. It kills. Chock it.\" }\n", "Ask the mate to open supply valve A.")]
    [InlineData("it is not safe to do", "protections:\n  cover: { asked of: hand, text: Cover. }\nhazards:\n  the pit: { places: [panel], protection: cover, danger: \"A pit. It kills. Have cover.\" }\n", "Ask the mate to open supply valve A.")]
    [InlineData("I cannot get there", "", "Ask the guard to turn the shutter to up.")]
    [InlineData("it does not move", "    faults: [ { fault: stuck, on: [supply valve A], after: 0 s, chance: 100 % } ]\n", "Ask the mate to open supply valve A.")]
    public void Ask_WhatCannotBe_IsAnsweredNoWithTheReason(string reason, string sections, params string[] steps)
    {
        steps[^1] += $" {Wait}";
        World world = Work(After30 + sections, steps);
        Assert.Equal((OutcomeKind.Stopped, "not done"), (world.Run!.Ended, world.Run.Mechanism));
        Assert.True(world.Run.EndedAt.Seconds < 120, $"{world.Run.EndedAt.Seconds}");
        Assert.EndsWith($", and the answer was no: {reason}.", Told(world, JournalKind.Said)[^1], StringComparison.Ordinal);
    }

    /// <summary>Permission given to whoever is asked counts, wherever it came from.</summary>
    [Fact]
    public void Ask_WithPermission_IsDone()
    {
        World world = Work(
            After30, $"Mate: Ask the desk for permission to operate the heater switch. {Wait}", $"Ask the mate to turn the heater switch on. {Wait}");
        Assert.Equal(OutcomeKind.Done, world.Run!.Ended);
        Assert.Equal("on", Position(world, "heater switch"));
    }

    /// <summary>At a step of his own until 100 s; then 2 s, 1 s and 6 s.</summary>
    [Fact]
    public void Ask_SomebodyWithAStepOfTheirOwn_DoesItAfterThat()
    {
        World world = Work(After30, $"At the same time:\n   - Hand: {Full}\n   - Mate: Wait 100 s.");
        Assert.Equal((OutcomeKind.Done, 109.0), Ended(world));
        Assert.Contains("103 The mate turned the throttle to full.", Told(world, JournalKind.Deed));
    }

    /// <summary>Given up at 37 s, while the mate reacts: his own next step waits until he has answered, at 45 s, and turns it back.</summary>
    [Fact]
    public void Run_OwnStepWhileAway_IsDoneAfterTheErrand()
    {
        World world = Work(After30, "Ask the mate to turn the throttle to full. Wait for the answer, at most 37 s. If not, wait 1 s.", "Mate: Turn the throttle to idle.");
        Assert.Equal((OutcomeKind.Done, 46.0), Ended(world));
        Assert.Equal("idle", Position(world, "throttle"));
    }

    /// <summary>Heard during a step of his own after whoever asked had given up: done when that step is over, though the card goes on with somebody else.</summary>
    [Fact]
    public void Ask_HeardInALaterStep_IsDoneAfterIt()
    {
        World world = Work(After30, "Ask the mate to turn the throttle to full. Wait for the answer, at most 20 s. If not, wait 1 s.", "Mate: Wait 60 s.", "Wait 60 s.");
        Assert.Equal((OutcomeKind.Done, 141.0), Ended(world));
        Assert.Contains("84 The mate turned the throttle to full.", Told(world, JournalKind.Deed));
    }

    /// <summary>Two questions to one person are done one after the other: at 36 s heard, each takes 9 s.</summary>
    [Fact]
    public void Ask_TwoAskOne_AreServedInTurn()
    {
        World world = Work(After30, $"At the same time:\n   - Hand: {Full}\n   - Guard: Ask the mate to turn the lamp switch on. {Wait}");
        Assert.Equal((OutcomeKind.Done, 54.0), Ended(world));
        Assert.Equal(("full", "on"), (Position(world, "throttle"), Position(world, "lamp switch")));
    }

    /// <summary>Asked again while the first request is on: the answer to the first is not taken for that to the second.</summary>
    [Fact]
    public void Ask_AgainAfterGivingUp_WaitsForItsOwnAnswer()
    {
        const string Short = "Ask the mate to turn the throttle to full. Wait for the answer, at most 38 s. If not, wait 1 s.";
        World world = Work(After30, Short, $"Ask the mate to turn the throttle to idle. {Wait}");
        Assert.Equal((OutcomeKind.Done, 39.0 + 6 + 30 + 2 + 1 + 6), Ended(world));
        Assert.Equal("idle", Position(world, "throttle"));
    }

    /// <summary>Saved at every half second of a request with a walk, a wait of somebody else and a late answer; taken up each time it ends the same.</summary>
    [Fact]
    public void Restore_AtEveryMomentOfARequest_EndsTheSame()
    {
        Plan plan = Card.Plan(
            After30, $"At the same time:\n   - Hand: Ask the mate to open supply valve A. Wait for the answer, at most 55 s. If not, wait 1 s.\n   - Mate: Wait 50 s.",
            $"Ask the mate to turn the throttle to full. {Wait}", "Mate: Wait 3 s.");
        using Rig whole = new(plan, "standing");
        Outcome expected = Card.Run(whole).Run!.Outcome;
        Assert.Equal(OutcomeKind.Done, expected.Kind);
        int stages = 0;
        for (double at = 0.25; at < expected.Time.Seconds; at += 0.5)
        {
            using Rig first = new(plan, "standing");
            first.World.Begin(Rig.RunOf(plan, "Work"));
            first.World.RunTo(SimTime.FromSeconds(at));
            WorldSnapshot kept = first.World.Save();
            stages |= kept.Run!.Errands.Aggregate(0, (s, e) => s | (1 << (int)e.Stage));
            using Rig second = new(plan, "standing");
            second.World.Restore(WorldSnapshot.FromJson(kept.ToJson()), Rig.RunOf(plan, "Work"));
            second.World.RunTo(SimTime.Never);
            Assert.Equal(expected, second.World.Run!.Outcome);
        }

        Assert.Equal(0b11_1111, stages);
    }

    [Fact]
    public void Check_NobodyOfThatRoleInTheSituation_SaysWhereAndWhatWouldBeRight()
    {
        Plan plan = Card.Plan("", $"Ask the desk to turn the throttle to full. {Wait}");
        DiagnosticList found = [];
        AskedPeople.Check(Rig.ChoicesOf(plan, "Work"), plan.Book.Situations["standing"], found);
        Diagnostic one = Assert.Single(found);
        Assert.Equal(("W009", Severity.Error, 5, 4), (one.Code, one.Severity, one.Span.Line, one.Span.Column));
        Assert.Contains("- { role: desk, at: [PLACE] }", one.Fix, StringComparison.Ordinal);
        Assert.False(AskedPeople.AreThere(Rig.ChoicesOf(plan, "Work"), plan.Book.Situations["standing"]));
    }

    /// <summary>A step that is somebody's is nobody's where they are not: nobody else does it for them in silence.</summary>
    [Fact]
    public void Check_StepOfARoleThatIsNotThere_SaysWhere()
    {
        Plan plan = Card.Plan("", "Wait 1 s.", "Desk: Wait 1 s.");
        DiagnosticList found = [];
        AskedPeople.Check(Rig.ChoicesOf(plan, "Work"), plan.Book.Situations["standing"], found);
        Diagnostic one = Assert.Single(found);
        Assert.Equal(("W009", 6), (one.Code, one.Span.Line));
        Assert.Contains("`desk` has this step", one.Message, StringComparison.Ordinal);
    }

    private static World Work(string sections, params string[] steps)
    {
        using Rig rig = new(Card.Plan(sections, steps), "standing");
        return Card.Run(rig);
    }

    private static (OutcomeKind Kind, double Seconds) Ended(World world) => (world.Run!.Ended, Math.Round(world.Run.EndedAt.Seconds, 3));

    private static string Position(World world, string item) =>
        world.Plan.Book.Items[item].Positions[(int)world.GetSlot(world.Plan.Items[item].Position!.Value)];

    private static string[] Told(World world, params JournalKind[] kinds) =>
        [.. world.Journal!.Where(j => kinds.Contains(j.Kind)).Select(j => FormattableString.Invariant($"{j.Time.Seconds:0.#} {j.Text}"))];
}
