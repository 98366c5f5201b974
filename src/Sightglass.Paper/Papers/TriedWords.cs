using System.Globalization;
using Sightglass.Basics.Language;
using Sightglass.Trials.Results;

namespace Sightglass.Paper.Papers;

/// <summary>What a trial came to, in the sentences that stand on a card.</summary>
public static class TriedWords
{
    /// <summary>Road numbers that are told by name in a sentence.</summary>
    private const int MostNumbers = 6;

    /// <summary>Its situation, and what it came to.</summary>
    public static string Of(TrialResult result)
    {
        ArgumentNullException.ThrowIfNull(result);
        return $"{Say.Begin(Say.Book(result.Setup.Situation.Name))}: {Counts(result)}";
    }

    /// <summary>In how many cases, on which machines, how they ended.</summary>
    public static string Counts(TrialResult result)
    {
        ArgumentNullException.ThrowIfNull(result);
        string unused = result.NotApplicable > 0 ? Say.With($"; in {result.NotApplicable} it was not to be used") : "";
        return Say.With($"Tried by simulation in {result.Outcomes.Length - result.NotRun} cases{OnNumbers(result)}: {result.Done} ended well, {result.Stopped} stopped safely, {result.Failed} failed, {result.Undecided} undecided{unused}.");
    }

    /// <summary>Which machines were tried: <c> on road numbers 4101 and 4104</c>; empty for a book without.</summary>
    public static string OnNumbers(TrialResult result)
    {
        ArgumentNullException.ThrowIfNull(result);
        return result.ByNumber.Length switch
        {
            0 => "",
            1 => Say.With($" on road number {result.ByNumber[0].Number}"),
            <= MostNumbers => Say.With($" on road numbers {Say.List(result.ByNumber.Select(n => n.Number))}"),
            int many => Say.With($" on {many} road numbers"),
        };
    }
}
