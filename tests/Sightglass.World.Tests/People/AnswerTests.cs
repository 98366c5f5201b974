using Sightglass.Basics.Statistics;
using Sightglass.Plant.Plans;
using Sightglass.World.Runs;
using Sightglass.World.Tests.Trade;

namespace Sightglass.World.Tests.People;

/// <summary>Questions may stay unanswered, and answers take their time.</summary>
public sealed class AnswerTests
{
    private const string Sections = "protections:\n  cover: { asked of: desk, text: Somebody watches. }\n";
    private const string Ask = "Ask the desk for cover. Wait for the answer, at most 2 min. If not, stop: nobody answers.";

    /// <summary>Six seconds to ask (common practice, no source), then the answer.</summary>
    [Theory]
    [InlineData("{ after: 30 s, unanswered: 0 % }", OutcomeKind.Done, 36 + 6)]
    [InlineData("{ after: 114 s, unanswered: 0 % }", OutcomeKind.Done, 120 + 6)]
    [InlineData("{ after: 115 s, unanswered: 0 % }", OutcomeKind.Stopped, 120)]
    [InlineData("{ after: 5 s, unanswered: 100 % }", OutcomeKind.Stopped, 120)]
    public void Ask_AsTheSituationSays_TakesThatTime(string answers, OutcomeKind outcome, double seconds)
    {
        using Rig rig = new(PlanWith(answers), "standing");
        World world = Card.Run(rig);
        Assert.Equal((outcome, seconds), (world.Run!.Ended, Math.Round(world.Run.EndedAt.Seconds, 3)));
    }

    /// <summary>Of 100 cases a quarter is unanswered: within bounds that are wrong once in a million (exact binomial).</summary>
    [Fact]
    public void Ask_ManyCases_AsOftenUnansweredAsSaid()
    {
        Plan plan = PlanWith("{ after: 5 s .. 60 s, unanswered: 25 % }");
        int stopped = 0;
        for (ulong number = 0; number < 100; number++)
        {
            using Rig rig = new(plan, "standing", number);
            stopped += Card.Run(rig).Run!.Ended == OutcomeKind.Stopped ? 1 : 0;
        }

        Assert.InRange(0.25, BinomialBounds.Lower(stopped, 100, 1 - 1e-6), BinomialBounds.Upper(stopped, 100, 1 - 1e-6));
    }

    /// <summary>Who is asked finishes what he is at: the chock first (20 s), then the question (6 s) and the answer (10 s), and giving back (6 s).</summary>
    [Theory]
    [InlineData("Chock the throttle.", 20 + 6 + 10 + 6)]
    [InlineData("Wait 20 s.", 20 + 6)]
    public void Ask_SomebodyWhoIsBusy_IsAnsweredWhenHisHandsAreFree(string mate, double seconds)
    {
        const string Mate = "protections:\n  cover: { asked of: mate, text: Somebody watches. }\n  chock: { chocks: [throttle], text: A chock. }\n";
        string together = $"At the same time:\n   - Mate: {mate}\n   - Hand: Ask the mate for cover. Wait for the answer, at most 5 min. If not, stop.";
        using Rig rig = new(Card.Plan(Answers("{ after: 10 s, unanswered: 0 % }") + Mate, together, "Give back cover."), "standing");
        World world = Card.Run(rig);
        Assert.Equal((OutcomeKind.Done, seconds), (world.Run!.Ended, Math.Round(world.Run.EndedAt.Seconds, 3)));
    }

    private static Plan PlanWith(string answers) => Card.Plan(Answers(answers) + Sections, Ask, "Give back cover.");

    private static string Answers(string answers) => $"    answers: {answers}\n";
}
