using System.Globalization;
using Sightglass.Basics.Time;
using Sightglass.Cli.Tries;
using Sightglass.Trials.Results;

namespace Sightglass.Cli.Reports;

/// <summary>Sentences about a trial, the same on the page and in the terminal.</summary>
internal static class TrialWords
{
    /// <summary>With the bound in bold for a page.</summary>
    public static string Verdict(TrialResult result)
    {
        if (result.Applicable == 0)
        {
            return "The situation never calls for this card.";
        }

        if (result.LowerBound is not { } bound)
        {
            return "Stopped early: no bound.";
        }

        string share = (Math.Floor(bound * 1000) / 10).ToString("0.0", CultureInfo.InvariantCulture);
        return result.Passes
            ? $"The card ends well or safely in <b>at least {share} %</b> of the situations it is meant for, with 95 % confidence."
            : $"The card fails in <b>{result.Failed + result.Undecided} of {result.Applicable}</b> cases it is meant for.";
    }

    public static string Counts(TrialResult result) => string.Create(
        CultureInfo.InvariantCulture,
        $"Tried by simulation in {result.Outcomes.Length - result.NotRun} cases: {result.Done} ended well, {result.Stopped} stopped safely, {result.Failed} failed, {result.Undecided} undecided; in {result.NotApplicable} it was not to be used.");

    public static string Failure(FailureStory failure)
    {
        ArgumentNullException.ThrowIfNull(failure);
        return $"{World(failure.Group.Mechanism)} at step {failure.Group.Step.ToString(CultureInfo.InvariantCulture)}";
    }

    public static string Departs(Counterexample least) => least.Departs.IsEmpty
        ? "It fails in the most ordinary case already."
        : "Least departure from the ordinary: " + string.Join(", ", least.Departs.Select(d => $"{d.Name} {d.Value}")) + ".";

    public static string Clock(SimTime time) =>
        TimeSpan.FromSeconds(Math.Floor(time.Seconds)).ToString(@"h\:mm\:ss", CultureInfo.InvariantCulture);

    private static string World(string text) => text.Length == 0 ? text : char.ToUpperInvariant(text[0]) + text[1..];
}
