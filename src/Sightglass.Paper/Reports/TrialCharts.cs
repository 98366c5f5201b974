using System.Collections.Immutable;
using System.Globalization;
using Sightglass.Basics.Language;
using Sightglass.Basics.Quantities;
using Sightglass.Drawing.Charts;
using Sightglass.Drawing.Svg;
using Sightglass.Trials.Results;
using Sightglass.Trials.Tries;
using Sightglass.World.Journal;
using Sightglass.World.Runs;
using Sightglass.World.Situations;

namespace Sightglass.Paper.Reports;

/// <summary>What a trial came to, as charts.</summary>
public static class TrialCharts
{
    /// <summary>Words that stand beside an axis; of more, as the rows of a recording are, a few show the way.</summary>
    private const int MostWords = 16;

    private const int FewWords = 5;

    /// <summary>The share that ended well or safely and its bound; empty where there is none.</summary>
    public static string Bound(TrialResult result) => result.LowerBound is { } bound
        ? new BoundScale(100.0 * (result.Done + result.Stopped) / result.Applicable, 100 * bound).Render()
        : "";

    /// <summary>Every case over two ranges, a mark for each mechanism.</summary>
    public static string Map(TrialResult result, DrawnRange across, DrawnRange up)
    {
        ImmutableArray<string> mechanisms = Mechanisms(result);
        ImmutableArray<MapPoint>.Builder points = ImmutableArray.CreateBuilder<MapPoint>();
        for (int i = 0; i < result.Outcomes.Length; i++)
        {
            Outcome outcome = result.Outcomes[i];
            if (outcome.Kind is not (OutcomeKind.NotApplicable or OutcomeKind.Running))
            {
                CaseDraws draws = result.DrawsOf(i);
                bool bad = outcome.Kind is OutcomeKind.Failed or OutcomeKind.Undecided;
                points.Add(new(At(across, draws), At(up, draws), bad ? mechanisms.IndexOf(outcome.Mechanism) : null, outcome.Kind == OutcomeKind.Stopped));
            }
        }

        return RangeMapDrawing.Render(new(Say.With($"Cases by {TrialWords.Range(across)} and {TrialWords.Range(up)}"), Axis(across), Axis(up), points.ToImmutable()) { Mechanisms = [.. mechanisms.Select(m => new MechanismWords(m).ToString())] });
    }

    /// <summary>The mark of a mechanism on the map, as a character.</summary>
    public static string Sign(TrialResult result, string mechanism) => MechanismMark.Sign(Mechanisms(result).IndexOf(mechanism));

    /// <summary>What matters, as the terminal tells it.</summary>
    public static string Ranking(TrialResult result) =>
        RankBars.Render(TrialWords.WhatTells, [.. TrialWords.Telling(result).Select(f => (TrialWords.Range(f.Range), f.Share, TrialWords.Share(f)))]);

    /// <summary>How long it took where it ended well.</summary>
    public static string Times(TrialResult result) =>
        HistogramDrawing.Render(new(Say.It("Time to done"), [.. result.Outcomes.Where(o => o.Kind == OutcomeKind.Done).Select(o => o.Time.Seconds / 60)], "min"));

    /// <summary>One failure on a line of time: when each step began, and when it went wrong.</summary>
    public static string Line(FailureStory failure)
    {
        ArgumentNullException.ThrowIfNull(failure);
        Outcome end = failure.Story.Outcome;
        ImmutableArray<(double, string)> steps =
            [.. failure.Story.Journal.Where(j => j.Step > 0 && j.Kind != JournalKind.Truth).GroupBy(j => j.Step).Select(g => (g.First().Time.Seconds, g.Key.ToString(CultureInfo.InvariantCulture)))];
        string when = string.Create(CultureInfo.InvariantCulture, $"{new MechanismWords(end.Mechanism)}, {end.Time.Seconds / 60:0.#} min");
        return new CaseLine(Say.With($"Steps of the case until {when}"), [], steps, (end.Time.Seconds, when)).Render();
    }

    private static ImmutableArray<string> Mechanisms(TrialResult result) => [.. result.Groups.Select(g => g.Mechanism).Distinct(StringComparer.Ordinal)];

    // Words stand in equal strips, and a case lies inside of its strip where its draw fell.
    private static double At(DrawnRange range, CaseDraws draws) => range.Words.IsEmpty ? UnitOf(range).FromSi(range.Value(draws)) : draws.Uniform(range.Order);

    private static MapAxis Axis(DrawnRange range) => range.Words.IsEmpty
        ? new(range.Unit is { } unit ? $"{TrialWords.Range(range)}, {QuantityFormat.Symbol(unit)}" : TrialWords.Range(range), UnitOf(range).FromSi(range.From), UnitOf(range).FromSi(range.To))
        : new(TrialWords.Range(range), 0, 1) { Choices = [.. range.Words.Select((w, i) => range.Words.Length <= MostWords || i % ((range.Words.Length / FewWords) + 1) == 0 ? TrialWords.Choice(w) : "")] };

    private static Unit UnitOf(DrawnRange range) => range.Unit ?? UnitTable.One;
}
