using Sightglass.Basics.Time;
using Sightglass.Plant.Plans;
using Sightglass.World.Runs;
using Sightglass.World.Snapshots;
using Sightglass.World.Tests.Trade;

namespace Sightglass.World.Tests.People;

/// <summary>
/// What a card must come to, or must never, may speak of numbers that its steps read. The glass of C sinks by 8.5 L/min / 2 m² = 4.25 mm/min at full
/// throttle (derived), from 60 cm, read to the centimetre.
/// </summary>
public sealed class ReadNumberTests
{
    private const string Read1 = "Read sight glass C as P1.";
    private const string Read2 = "Read sight glass C as P2.";

    private static readonly string[] s_hour = ["Turn the throttle to full.", "Go to the panel.", Read1, "Wait 20 min.", Read2];

    /// <summary>20 min · 4.25 mm/min = 8.5 cm, each reading rounded: 8 cm or 9 cm.</summary>
    [Theory]
    [InlineData("P1 is known", "")]
    [InlineData("P1 − P2 is at most 10 cm", "")]
    [InlineData("P1 − P2 is at least 7 cm and engine runs", "")]
    [InlineData("P1 − P2 is at most 3 cm", "at the end it is not so that P1 − P2 is at most 3 cm")]
    [InlineData("engine runs and P1 − P2 is more than 10 cm", "at the end it is not so that P1 − P2 is more than 10 cm")]
    public void Run_DoneWhenNumbers_AreJudgedAtTheEnd(string done, string mechanism) => Check($"Done when: {done}.", mechanism, s_hour);

    [Theory]
    [InlineData("P2 is known", "P2 was never read")]
    [InlineData("P1 − P2 is at most 100 cm", "P2 was never read")]
    [InlineData("P2 is at most 100 cm", "P2 was never read")]
    [InlineData("P2 is at least 0 cm or engine runs", "")]
    public void Run_NumberNeverRead_IsNotDoneAndSaysWhy(string done, string mechanism) =>
        Check($"Done when: {done}.", mechanism, "Go to the panel.", Read1, "If sight glass C shows low, go to step 5.", "Go to the end.", Read2);

    [Theory]
    [InlineData("P1 − P2 is more than 3 cm", "P1 − P2 is more than 3 cm")]
    [InlineData("P1 − P2 is more than 10 cm", "")]
    [InlineData("engine starves; P2 is less than 55 cm", "P2 is less than 55 cm")]
    public void Run_MustNeverNumbers_FailWhenTheyAreRead(string never, string mechanism) => Check($"Must never: {never}.\nDone when: engine runs.", mechanism, s_hour);

    /// <summary>A number that is no number: no comparison with it holds, whichever way.</summary>
    [Theory]
    [InlineData("P2 is at most 100 cm")]
    [InlineData("P2 is at least 0 cm")]
    [InlineData("P1 − P2 is less than 100 cm")]
    [InlineData("P2 is known")]
    public void Run_CheckOfANumberNeverRead_DoesNotHold(string condition)
    {
        World world = Work(
            "Done when: engine runs.", "Go to the panel.", Read1, "If sight glass C does not show low, go to step 5.", Read2, $"Check that {condition}. If not, stop: no number.");
        Assert.Equal((OutcomeKind.Stopped, "no number"), (world.Run!.Ended, world.Run.Mechanism));
    }

    /// <summary>The story says the number; what the run ended of is the same text in every run, so that cases of one mechanism are one group.</summary>
    [Fact]
    public void Run_StopThatSaysANumber_EndsOfTheFormAndTellsTheNumber()
    {
        World world = Work("Done when: engine runs.", "Go to the panel.", Read1, "Stop: the glass shows {P1}, twice that is {2 * P1}.");
        Assert.Equal((OutcomeKind.Stopped, "the glass shows {P1}, twice that is {2 * P1}"), (world.Run!.Ended, world.Run.Mechanism));
        Assert.Contains("the glass shows 60\u202Fcm, twice that is 120\u202Fcm", world.Journal![^1].Text, StringComparison.Ordinal);
    }

    [Fact]
    public void Restore_WithNumbersReadAndNot_EndsTheSame()
    {
        Plan plan = PlanOf("Must never: P2 is less than 10 cm.\nDone when: P1 − P2 is at most 10 cm. Stays so for 1 min.", s_hour);
        using Rig whole = new(plan, "standing");
        Outcome expected = Card.Run(whole).Run!.Outcome;
        Assert.Equal(OutcomeKind.Done, expected.Kind);
        foreach (double at in new[] { 1.0, 5, 600, expected.Time.Seconds - 30 })
        {
            using Rig first = new(plan, "standing");
            first.World.Begin(Rig.RunOf(plan, "Work"));
            first.World.RunTo(SimTime.FromSeconds(at));
            using Rig second = new(plan, "standing");
            second.World.Restore(WorldSnapshot.FromJson(first.World.Save().ToJson()), Rig.RunOf(plan, "Work"));
            second.World.RunTo(SimTime.Never);
            Assert.Equal(expected, second.World.Run!.Outcome);
        }
    }

    private static void Check(string head, string mechanism, params string[] steps)
    {
        World world = Work(head, steps);
        Assert.Equal((mechanism.Length == 0 ? OutcomeKind.Done : OutcomeKind.Failed, mechanism), (world.Run!.Ended, world.Run.Mechanism));
    }

    private static World Work(string head, params string[] steps)
    {
        using Rig rig = new(PlanOf(head, steps), "standing");
        return Card.Run(rig);
    }

    private static Plan PlanOf(string head, string[] steps) =>
        TradeMachine.Plan(Card.Situation + "\n", $"Card: Work\nFor: hand, mate\n{head}\n\n" + string.Concat(steps.Select((s, i) => $"{i + 1}. {s}\n")));
}
