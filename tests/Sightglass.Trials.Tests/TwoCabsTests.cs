using Sightglass.Basics.Diagnostics;
using Sightglass.Book.Model;
using Sightglass.Cards;
using Sightglass.Cards.Tree;
using Sightglass.Plant.Plans;
using Sightglass.Trials.Results;
using Sightglass.Trials.Sweep;
using Xunit;

namespace Sightglass.Trials.Tests;

/// <summary>A machine with a cab at each end and one brake handle: the card that changes ends, and what becomes of it with a step forgotten. All of it is invented.</summary>
public sealed class TwoCabsTests
{
    private const int Cases = 64;

    private static readonly Lazy<Plan> s_plan = new(() => Books.Load("two-cabs"));

    [Fact]
    public void ChangeEnds_ItsSituation_EndsWellOrSafelyAndMostlyWell()
    {
        TrialResult result = Try(Text());
        Assert.True(result.Passes, string.Join('\n', result.Groups.Select(g => $"{g.Cases.Length} of {g.Mechanism} at step {g.Step}, such as case {g.Cases[0]}")));
        Assert.True(result.Done > Cases * 3 / 4, $"{result.Done} done, {result.Stopped} stopped");
    }

    /// <summary>With the handle left on the front stand the rear one does not move: nothing is set or released from there, and the card never ends well.</summary>
    [Fact]
    public void ChangeEnds_HandleLeftOnTheFrontStand_NeverDone()
    {
        TrialResult result = Try(Without("Turn the front brake handle to handle-off."));
        Assert.Equal(0, result.Done);
    }

    /// <summary>With the front stand left cut in, two stands work against each other.</summary>
    [Fact]
    public void ChangeEnds_FrontStandLeftCutIn_NeverDone()
    {
        TrialResult result = Try(Without("Turn the front cut-in cock to cut out."));
        Assert.Equal(0, result.Done);
    }

    private static SourceText Text() => s_plan.Value.Book.CardTexts.Single(t => t.Path.EndsWith("change-ends.card", StringComparison.Ordinal));

    /// <summary>The card without one of its steps; the numbers behind it are out of order, which is only warned of.</summary>
    private static SourceText Without(string step) =>
        new("shorter.card", string.Join('\n', Text().Text.Split('\n').Where(l => !l.EndsWith(step, StringComparison.Ordinal) && !l.StartsWith("Warning", StringComparison.Ordinal))));

    private static TrialResult Try(SourceText text)
    {
        DiagnosticList found = [];
        ClassBook book = s_plan.Value.Book;
        Card? card = CardReader.Read(text, book, found);
        Assert.True(card is { HasErrors: false }, string.Join('\n', found));
        TrialSetup? setup = TrialPreparation.Prepare(s_plan.Value, card, book.Situations["at the end of the line"], found);
        Assert.True(setup is not null, string.Join('\n', found));
        SweepOptions options = new() { Cases = Cases, Threads = 1 };
        return new(setup, options, [.. CaseSweep.Run(setup, options)]);
    }
}
