using System.Collections.Immutable;
using Sightglass.Basics.Diagnostics;
using Sightglass.Book.Model;
using Sightglass.Cards;
using Sightglass.Cards.Tree;
using Sightglass.Plant.Plans;
using Sightglass.Trials.Missteps;
using Sightglass.Trials.Sweep;

namespace Sightglass.Trials.Tests;

/// <summary>A card that passes without a step of its own work does not need it: at least one must be needed.</summary>
public sealed class LeftOutStepTests(ITestOutputHelper output)
{
    /// <summary>Every card of the demo with the first situation that is said to be for it, but the draft, which fails.</summary>
    public static TheoryData<string> Cards { get; } =
        [.. Books.Curlew.Book.CardNames.Where(c => !c.EndsWith("-draft", StringComparison.Ordinal)).Order(StringComparer.Ordinal)];

    /// <summary>
    /// Going somewhere does not count: what cannot be reached fails in any card. A step that is needed on one machine is needed; so the first road number is asked first, in as
    /// many cases as it has lanes, and only where nothing shows there all of them in more.
    /// </summary>
    [Theory]
    [MemberData(nameof(Cards))]
    public void Card_StepsLeftOutInTurn_OneIsNeeded(string cardFile)
    {
        Plan plan = Books.Curlew;
        DiagnosticList found = [];
        SourceText text = plan.Book.CardTexts.Single(t => Path.GetFileNameWithoutExtension(t.Path) == cardFile);
        Card card = CardReader.Read(text, plan.Book.For(text), found)!;
        Situation situation = plan.Book.Situations.Values.First(s => s.Cards.Contains(cardFile));
        TrialSetup all = TrialPreparation.Prepare(Books.CurlewFleet, card, situation, found)!;
        LeftOutResult? needed = Needed(TrialPreparation.Prepare(Books.CurlewFleet, card, situation, found, all.Number.Words[0])!, card, 8) ?? Needed(all, card, situation.Train is null ? 24 : 8);
        output.WriteLine($"{cardFile}: {needed?.Text}  {needed?.Bad} fail, {needed?.Stops} stop of {needed?.Applicable}");
        Assert.NotNull(needed);
    }

    /// <summary>A lack may not make the card fail but only stop, safely, where it was done before: that is a worsening too.</summary>
    [Fact]
    public void Run_StepWhoseLackOnlyStopsTheCard_IsCounted()
    {
        Plan plan = Books.Curlew;
        Card card = CardReader.Read(plan.Book.CardTexts.Single(t => Path.GetFileNameWithoutExtension(t.Path) == "reset-the-cut-off"), plan.Book, [])!;
        ImmutableArray<LeftOutResult> rows = LeftOutTrial.Run(TrialPreparation.Prepare(Books.CurlewFleet, card, plan.Book.Situations["cut-off tripped"], [])!, card, new() { Cases = 24, Threads = 1 });
        Assert.Contains(rows, r => r.Stops > 0);
        Assert.All(rows, r => Assert.InRange(r.Bad + r.Stops, 0, r.Applicable));
    }

    private static LeftOutResult? Needed(TrialSetup setup, Card card, int cases) =>
        LeftOutTrial.Each(setup, card, new() { Cases = cases, Threads = 1 }, t => !t.Contains("Go to ", StringComparison.Ordinal)).FirstOrDefault(r => r.Matters);
}
