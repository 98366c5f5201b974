using System.Globalization;
using Sightglass.Cli.Tries;
using Sightglass.Trials.Results;

namespace Sightglass.Cli.Output;

/// <summary>What <c>try --json</c> answers: the trial in each situation.</summary>
internal sealed record TryAnswer(string Build, IReadOnlyList<TryAnswer.TrialRow> Trials)
{
    public static TryAnswer Of(IEnumerable<TryResult> results) => new(BuildName.Text, [.. results.Select(Row)]);

    private static TrialRow Row(TryResult r) => new(
        r.Request.Card.Title,
        r.Trial.Setup.Start.Situation.Name,
        r.Trial.Setup.Plan.Book.RoadNumberInUse,
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
        r.Hash.ToString("x16", CultureInfo.InvariantCulture),
        [.. r.Trial.Groups.Select(g => Group(r, g))],
        [.. r.Ranking.Select(x => new RangeRow(x.Range.Name, x.Share))],
        [.. r.LeftOut.Select(l => new LeftOutRow(l.Step, l.Text, l.Applicable, l.Bad, l.Mechanism, l.Stops))]);

    private static GroupRow Group(TryResult r, FailureGroup group)
    {
        FailureStory? story = r.Failures.FirstOrDefault(f => ReferenceEquals(f.Group, group));
        return new(
            group.Mechanism,
            group.Step,
            group.Cases.Length,
            r.Trial.FirstCase + group.Cases[0],
            story is null ? null : [.. story.Least.Departs.Select(d => new ValueRow(d.Name, d.Value))],
            story is null ? null : [.. story.Story.Journal.Select(RunAnswer.StoryRow.Of)]);
    }

    /// <param name="LowerBound">Share of applicable cases that end well or safely, from below with 95 % confidence; null where the trial was stopped or is for none.</param>
    /// <param name="Hash">Over all outcomes, in the order of their cases.</param>
    internal sealed record TrialRow(
        string Card,
        string Situation,
        string? RoadNumber,
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
        string Hash,
        IReadOnlyList<GroupRow> Failures,
        IReadOnlyList<RangeRow> WhatMatters,
        IReadOnlyList<LeftOutRow> LeftOut);

    /// <param name="Least">What must differ from the ordinary for it to fail; null where it was not looked for.</param>
    internal sealed record GroupRow(string Mechanism, int Step, int Cases, int FirstCase, IReadOnlyList<ValueRow>? Least, IReadOnlyList<RunAnswer.StoryRow>? Story);

    internal sealed record RangeRow(string Range, double Share);

    /// <param name="Stops">Cases that were done with the step and stop without it.</param>
    internal sealed record LeftOutRow(int Step, string Text, int Applicable, int Failed, string Mechanism, int Stops);
}
