using System.Globalization;
using Sightglass.Basics.Language;
using Sightglass.Basics.Time;
using Sightglass.Paper.Papers;
using Sightglass.Trials.Maps;
using Sightglass.Trials.Results;
using Sightglass.Trials.Tries;
using Sightglass.World.Runs;
using Sightglass.World.Situations;

namespace Sightglass.Paper.Reports;

/// <summary>Sentences about a trial, the same on the page and in the terminal.</summary>
public static class TrialWords
{
    /// <summary>Road numbers that are told by name in a sentence.</summary>
    private const int MostNumbers = 6;

    /// <summary>Ways to fail that are told in a sentence, beside those laid out.</summary>
    private const int MostOthers = 4;

    /// <summary>With the bound in bold for a page.</summary>
    public static string Verdict(TrialResult result)
    {
        if (result.Applicable == 0)
        {
            return Say.It("The situation never calls for this card.");
        }

        return !result.Passes ? Say.With($"The card fails in <b>{result.Failed + result.Undecided} of {result.Applicable}</b> cases it is meant for.")
            : result.StoppedEarly ? Say.With($"The card ends well or safely in <b>at least {Bound(result)}</b> of the situations it is meant for, with 95 % confidence, after being stopped early.")
            : Say.With($"The card ends well or safely in <b>at least {Bound(result)}</b> of the situations it is meant for, with 95 % confidence.");
    }

    /// <summary>The bound in per cent, rounded down; empty where there is none.</summary>
    public static string Bound(TrialResult result) =>
        result.LowerBound is { } bound ? string.Create(CultureInfo.InvariantCulture, $"{Math.Floor(bound * 1000) / 10:0.0} %") : "";

    public static string Counts(TrialResult result) => TriedWords.Counts(result);

    public static string Failure(TrialResult result, FailureStory failure)
    {
        ArgumentNullException.ThrowIfNull(failure);
        return Say.Begin(Say.With($"{new MechanismWords(failure.Group.Mechanism)} at step {failure.Group.Step}{On(result, failure.Group)}"));
    }

    /// <summary>Failures that are not laid out: of how many cases, how and at which step; empty where all are.</summary>
    public static string Others(TryResult found)
    {
        ArgumentNullException.ThrowIfNull(found);
        FailureGroup[] rest = [.. found.Trial.Groups.Where(g => found.Failures.All(f => f.Group != g))];
        int cases = rest.Sum(g => g.Cases.Length);
        string how = string.Join("; ", rest.Take(MostOthers).Select(g => Say.With($"{new MechanismWords(g.Mechanism)} at step {g.Step}{On(found.Trial, g)}")));
        return cases == 0 ? "" : Say.Of(cases, $"Besides, in one case: {how}.", $"Besides, in {cases} cases: {how}.");
    }

    /// <summary>Where a failure happened on some of the machines only: <c>, only on road number 4112</c>; empty where it happened on all.</summary>
    public static string On(TrialResult result, FailureGroup group)
    {
        ArgumentNullException.ThrowIfNull(group);
        int tried = result.ByNumber.Count(n => n.Applicable > 0);
        return group.Numbers.Length == tried || group.Numbers.Length > MostNumbers ? ""
            : group.Numbers.Length > 1 ? Say.With($", on road numbers {Say.List(group.Numbers)}")
            : group.Cases.Length > 1 ? Say.With($", only on road number {group.Numbers[0]}")
            : Say.With($", on road number {group.Numbers[0]}");
    }

    /// <summary>On which machines it fails, worst first; empty where none fails or there is one machine only.</summary>
    public static string ByNumber(TrialResult result)
    {
        NumberResult[] tried = [.. result.ByNumber.Where(n => n.Applicable > 0)];
        NumberResult[] bad = [.. tried.Where(n => Bad(n) > 0).OrderByDescending(n => Bad(n) / (double)n.Applicable)];
        if (tried.Length < 2 || bad.Length == 0)
        {
            return "";
        }

        string worst = string.Join("; ", bad.Take(MostNumbers).Select(n => Say.With($"{n.Number} in {Bad(n)} of {n.Applicable}")));
        string[] rest = [.. bad.Length > MostNumbers ? [Say.With($"{bad.Length - MostNumbers} more")] : Array.Empty<string>(), .. Good(tried)];
        return Say.With($"Fails on {string.Join("; ", rest.Prepend(worst))}.");
    }

    private static IEnumerable<string> Good(NumberResult[] tried)
    {
        string[] good = [.. tried.Where(n => Bad(n) == 0).Select(n => n.Number)];
        return good.Length switch
        {
            0 => [],
            <= MostNumbers => [Say.With($"never on {Say.List(good)}")],
            int many => [Say.With($"never on the other {many}")],
        };
    }

    private static int Bad(NumberResult number) => number.Failed + number.Undecided;

    /// <summary>What a ranking of factors is of.</summary>
    public static string WhatTells => Say.It("What tells most whether it fails");

    /// <summary>The factors that are told, most telling first: at most six that come to a per cent.</summary>
    public static IEnumerable<RankedFactor> Telling(TrialResult result) => result.Ranking.Where(f => f.Share >= 0.005).Take(6);

    public static string Share(RankedFactor factor)
    {
        ArgumentNullException.ThrowIfNull(factor);
        return factor.Share.ToString("0 %", CultureInfo.InvariantCulture);
    }

    public static string Departs(Counterexample least) => least.Departs.IsEmpty
        ? Say.It("It fails in the most ordinary case already.")
        : Say.With($"Least departure from the ordinary: {string.Join(", ", least.Departs.Select(d => $"{RangeWords.Of(d.Name)} {Choice(d.Value)}"))}.");

    public static string Clock(SimTime time) =>
        TimeSpan.FromSeconds(Math.Floor(time.Seconds)).ToString(@"h\:mm\:ss", CultureInfo.InvariantCulture);

    /// <summary>What a situation draws, by its name.</summary>
    public static string Range(DrawnRange range)
    {
        ArgumentNullException.ThrowIfNull(range);
        return RangeWords.Of(range.Name);
    }

    /// <summary>One of the words that are drawn: a position, or a name of the book.</summary>
    public static string Choice(string word) => Say.Word(word);
}
