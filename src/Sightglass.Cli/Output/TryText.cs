using Sightglass.Cli.Tries;
using Sightglass.Paper.Papers;
using Sightglass.Paper.Reports;
using Sightglass.Trials.Missteps;
using Sightglass.Trials.Results;
using Sightglass.Trials.Tries;
using Sightglass.World.Journal;

namespace Sightglass.Cli.Output;

/// <summary>The result of a trial for a reader at a terminal.</summary>
internal static class TryText
{
    /// <summary>A line or two a situation, for a card tried in several.</summary>
    public static void PrintBrief(TextWriter output, TryResult result)
    {
        TrialResult trial = result.Trial;
        string verdict = trial.Applicable == 0 ? "not for it" : trial.Passes ? "none fails" : "FAILS";
        output.WriteLine($"  {trial.Setup.Situation.Name}: {verdict}; {Counts(trial)}. {(trial.Applicable == 0 ? "" : Bound(trial))}");
        if (result.Failures.FirstOrDefault() is { } failure)
        {
            output.WriteLine($"    {failure.Group.Mechanism}, at step {failure.Group.Step}{TrialWords.On(trial, failure.Group)}. {Least(failure)} More: -s \"{trial.Setup.Situation.Name}\"");
        }
    }

    public static void Print(TextWriter output, TryResult result)
    {
        TrialResult trial = result.Trial;
        output.WriteLine($"{result.Request.Card.Title}: tried by simulation in {trial.Outcomes.Length - trial.NotRun} cases of `{trial.Setup.Situation.Name}`{TriedWords.OnNumbers(trial)}, seed {trial.Seed}");
        output.WriteLine($"  {Counts(trial)}.");
        output.WriteLine("  " + Bound(trial));
        if (TrialWords.ByNumber(trial) is { Length: > 0 } byNumber)
        {
            output.WriteLine("  " + byNumber);
        }

        foreach (FailureStory failure in result.Failures)
        {
            PrintFailure(output, result, failure);
        }

        foreach (FailureGroup group in trial.Groups.Where(g => !result.Failures.Any(f => ReferenceEquals(f.Group, g))))
        {
            output.WriteLine($"  {group.Cases.Length} × {group.Mechanism}, at step {group.Step}{TrialWords.On(trial, group)}: case {trial.FirstCase + group.Cases[0]}");
        }

        if (!trial.Ranking.IsEmpty)
        {
            output.WriteLine($"  {TrialWords.WhatTells}: " + string.Join("; ", TrialWords.Telling(trial).Select(f => $"{f.Range.Name} {TrialWords.Share(f)}")));
        }

        PrintLeftOut(output, result);
        if (!trial.Setup.Machines.All(m => m.Plan.LeftOut.IsEmpty))
        {
            string still = string.Join(", ", trial.Setup.Machines.SelectMany(m => m.Plan.LeftOut).Distinct());
            output.WriteLine($"  Worked out without {still}: nothing that the card asks about depends on it.");
        }

        output.WriteLine($"  Outcomes {result.Hash:x16}; {BuildName.Text}");
        output.WriteLine();
    }

    /// <summary>The bound in words: exact for a number of cases settled beforehand, valid at any time for a trial that was stopped.</summary>
    public static string Bound(TrialResult trial)
    {
        if (trial.Applicable == 0)
        {
            return "Nothing can be said: the card was for none of these cases.";
        }

        string share = TrialWords.Bound(trial);
        return trial.StoppedEarly
            ? $"Stopped early, {trial.NotRun} cases not run. At least {share} of such cases end well or safely (95 % confidence, valid whenever one stops)."
            : $"At least {share} of such cases end well or safely (95 % confidence, exact).";
    }

    private static string Counts(TrialResult trial) => trial.Applicable == 0
        ? $"not applicable in all {trial.NotApplicable} cases"
        : $"{trial.Applicable} cases it is for: {trial.Done} done, {trial.Stopped} stopped safely, {trial.Failed} failed, {trial.Undecided} undecided; not applicable in {trial.NotApplicable}";

    private static string Least(FailureStory failure) => failure.Least.Departs.IsEmpty
        ? "It fails in the most ordinary case."
        : $"The least it takes: {string.Join("; ", failure.Least.Departs.Select(d => $"{d.Name} {d.Value}"))}.";

    private static void PrintFailure(TextWriter output, TryResult result, FailureStory failure)
    {
        int first = result.Trial.FirstCase + failure.Group.Cases[0];
        output.WriteLine();
        output.WriteLine($"  {failure.Group.Cases.Length} × {failure.Group.Mechanism}, at step {failure.Group.Step}{TrialWords.On(result.Trial, failure.Group)}. First: case {first}");
        output.WriteLine($"    {Least(failure)}");
        foreach (JournalEntry entry in failure.Story.Journal)
        {
            output.WriteLine($"   {StoryLine.Text(entry)}");
        }

        output.WriteLine($"    Told in full: {result.Request.Command(first)}");
    }

    private static string Cost(LeftOutResult row)
    {
        string[] parts =
        [
            .. row.Bad > row.BadWithIt ? [$"{row.Bad} of {row.Applicable} fail: {row.Mechanism}"] : Array.Empty<string>(),
            .. row.Stops > 0 ? [$"{row.Stops} of {row.Applicable} stop that were done"] : Array.Empty<string>(),
        ];
        return row.Matters ? string.Join("; ", parts) : "no worse: is it needed?";
    }

    private static void PrintLeftOut(TextWriter output, TryResult result)
    {
        foreach (LeftOutResult row in result.LeftOut)
        {
            output.WriteLine(row.Line == 0 ? $"  Without step {row.Text} {Cost(row)}" : $"    Without its line {row.Text} {Cost(row)}");
        }

        if (result.LeftOut.Length > 0 && result.Trial.Passes && !LeftOutTrial.AnyMatters(result.LeftOut))
        {
            output.WriteLine("  The card passes without any one of its steps: shorten it, or look whether the situation asks anything of it.");
        }
    }
}
