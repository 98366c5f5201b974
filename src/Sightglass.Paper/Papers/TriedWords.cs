using System.Globalization;
using Sightglass.Trials.Results;

namespace Sightglass.Paper.Papers;

/// <summary>What a trial came to, in the sentences that stand on a card.</summary>
public static class TriedWords
{
    /// <summary>Road numbers that are told by name in a sentence.</summary>
    private const int MostNumbers = 6;

    /// <summary>In how many cases, on which machines, how they ended.</summary>
    public static string Counts(TrialResult result)
    {
        ArgumentNullException.ThrowIfNull(result);
        string unused = result.NotApplicable > 0 ? string.Create(CultureInfo.InvariantCulture, $"; in {result.NotApplicable} it was not to be used") : "";
        return string.Create(
            CultureInfo.InvariantCulture,
            $"Tried by simulation in {result.Outcomes.Length - result.NotRun} cases{OnNumbers(result)}: {result.Done} ended well, {result.Stopped} stopped safely, {result.Failed} failed, {result.Undecided} undecided{unused}.");
    }

    /// <summary>Which machines were tried: <c> on road numbers 4101 and 4104</c>; empty for a book without.</summary>
    public static string OnNumbers(TrialResult result)
    {
        ArgumentNullException.ThrowIfNull(result);
        return result.ByNumber.Length switch
        {
            0 => "",
            1 => $" on road number {result.ByNumber[0].Number}",
            <= MostNumbers => $" on road numbers {List(result.ByNumber.Select(n => n.Number))}",
            int many => $" on {many.ToString(CultureInfo.InvariantCulture)} road numbers",
        };
    }

    /// <summary><c>a, b and c</c>.</summary>
    public static string List(IEnumerable<string> names)
    {
        string[] all = [.. names];
        return all.Length < 2 ? string.Concat(all) : $"{string.Join(", ", all[..^1])} and {all[^1]}";
    }
}
