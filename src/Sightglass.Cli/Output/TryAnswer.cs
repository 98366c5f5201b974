using System.Globalization;
using Sightglass.Cli.Tries;
using Sightglass.Trials.Results;
using Sightglass.Trials.Tries;

namespace Sightglass.Cli.Output;

/// <summary>What <c>try --json</c> answers: the trial in each situation.</summary>
internal sealed record TryAnswer(string Build, IReadOnlyList<TryAnswer.TrialRow> Trials)
{
    public static TryAnswer Of(IEnumerable<TryResult> results) => new(BuildName.Text, [.. results.Select(Row)]);

    private static TrialRow Row(TryResult r) => new(
        r.Request.Card.Title,
        r.Trial.Setup.Situation.Name,
        r.Trial.Seed,
        r.Trial.Outcomes.Length,
        r.Trial.NotRun,
        r.Trial.Applicable,
        r.Trial.NotApplicable,
        r.Trial.Done,
        r.Trial.Stopped,
        r.Trial.Failed,
        r.Trial.Undecided,
        r.Trial.LowerBound,
        r.Trial.StoppedEarly,
        r.Hash.ToString("x16", CultureInfo.InvariantCulture),
        [.. r.Trial.ByNumber.Select(n => new NumberRow(n.Number, n.Applicable, n.Done, n.Stopped, n.Failed, n.Undecided))],
        [.. r.Trial.Groups.Select(g => Group(r, g))],
        [.. r.Trial.Ranking.Select(x => new FactorRow(x.Range.Name, x.Share))],
        [.. r.LeftOut.Select(l => new LeftOutRow(l.Step, l.Line, l.Text, l.Applicable, l.Bad, l.Mechanism, l.Stops))]);

    private static GroupRow Group(TryResult r, FailureGroup group)
    {
        FailureStory? story = r.Failures.FirstOrDefault(f => ReferenceEquals(f.Group, group));
        return new(
            group.Mechanism,
            group.Step,
            group.Cases.Length,
            r.Trial.FirstCase + group.Cases[0],
            group.Numbers,
            r.Request.Command(r.Trial.FirstCase + group.Cases[0]),
            story is null ? null : [.. story.Least.Departs.Select(d => new ValueRow(d.Name, d.Value))],
            story is null ? null : [.. story.Story.Journal.Select(RunAnswer.StoryRow.Of)]);
    }

    /// <param name="LowerBound">Share of applicable cases that end well or safely, from below with 95 % confidence; null where the card was for none.</param>
    /// <param name="StoppedEarly">Whether cases were left out: the bound is then the wider one that holds whenever one stops.</param>
    /// <param name="Hash">Over all outcomes, in the order of their cases.</param>
    /// <param name="RoadNumbers">What it came to on each of which a case could be; none for a book without.</param>
    internal sealed record TrialRow(
        string Card,
        string Situation,
        ulong Seed,
        int Cases,
        int NotRun,
        int Applicable,
        int NotApplicable,
        int Done,
        int Stopped,
        int Failed,
        int Undecided,
        double? LowerBound,
        bool StoppedEarly,
        string Hash,
        IReadOnlyList<NumberRow> RoadNumbers,
        IReadOnlyList<GroupRow> Failures,
        IReadOnlyList<FactorRow> WhatMatters,
        IReadOnlyList<LeftOutRow> LeftOut);

    internal sealed record NumberRow(string Number, int Applicable, int Done, int Stopped, int Failed, int Undecided);

    /// <param name="RoadNumbers">On which it happened.</param>
    /// <param name="Told">The call that tells the first case step by step.</param>
    /// <param name="Least">What must differ from the ordinary for it to fail; null where it was not looked for.</param>
    internal sealed record GroupRow(string Mechanism, int Step, int Cases, int FirstCase, IReadOnlyList<string> RoadNumbers, string Told, IReadOnlyList<ValueRow>? Least, IReadOnlyList<RunAnswer.StoryRow>? Story);

    /// <param name="Name">Of a range of the situation, or `road number`.</param>
    /// <param name="Share">Of whether a case fails, the share that it explains alone, less what chance would: 0…1.</param>
    internal sealed record FactorRow(string Name, double Share);

    /// <param name="Line">Of the step's list, from 1; 0 for the whole step.</param>
    /// <param name="Stops">Cases that were done with the step and stop without it.</param>
    internal sealed record LeftOutRow(int Step, int Line, string Text, int Applicable, int Failed, string Mechanism, int Stops);
}
