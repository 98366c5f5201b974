using Sightglass.Basics.Diagnostics;
using Sightglass.Cards;
using Sightglass.Cards.Missteps;
using Sightglass.Cards.Tree;
using Sightglass.Plant.Plans;
using Sightglass.Trials.Results;
using Sightglass.Trials.Sweep;

namespace Sightglass.Trials.Tests;

/// <summary>A card that passes without a step of its own work does not need it: at least one must be needed.</summary>
public sealed class LeftOutStepTests(ITestOutputHelper output)
{
    /// <summary>Going somewhere does not count: what cannot be reached fails in any card.</summary>
    [Theory]
    [InlineData("empty-a-leaking-compartment", "leaking compartment")]
    [InlineData("fuel-the-machine", "fuelling")]
    [InlineData("prime-a-starved-engine", "starving engine")]
    [InlineData("drain-water", "water in the fuel")]
    [InlineData("reset-the-cut-off", "cut-off tripped")]
    [InlineData("before-a-steep-grade", "before the grade")]
    [InlineData("leak-with-the-engine-stopped", "leak with the engine stopped")]
    public void Card_EachStepLeftOut_OneAtLeastIsNeeded(string cardFile, string situation)
    {
        Plan plan = Books.Curlew;
        DiagnosticList found = [];
        Card card = CardReader.Read(plan.Book.CardTexts.Single(t => Path.GetFileNameWithoutExtension(t.Path) == cardFile), plan.Book, found)!;
        int done = Try(plan, card, situation)!.Done;
        List<int> needed = [];
        foreach (CardElement.Step step in card.Steps.Where(s => !s.Span.Text.Contains("Go to ", StringComparison.Ordinal)))
        {
            if (Try(plan, Misstep.LeaveOut(card, step.Number), situation) is { } without && (without.Failed > 0 || without.Done < done))
            {
                needed.Add(step.Number);
            }
        }

        output.WriteLine($"{cardFile}: needed {string.Join(", ", needed)} of {card.Steps.Count()}");
        Assert.NotEmpty(needed);
    }

    private static TrialResult? Try(Plan plan, Card card, string situation)
    {
        SweepOptions options = new() { Cases = 16, Threads = 1 };
        return TrialPreparation.Prepare(plan, card, plan.Book.Situations[situation], []) is { } setup ? new(setup, options, [.. CaseSweep.Run(setup, options)]) : null;
    }
}
