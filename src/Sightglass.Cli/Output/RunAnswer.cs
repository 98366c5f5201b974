using Sightglass.Cli.Runs;
using Sightglass.World.Journal;

namespace Sightglass.Cli.Output;

/// <summary>What <c>run --json</c> answers.</summary>
internal sealed record RunAnswer(
    string Book,
    string Situation,
    string? RoadNumber,
    ulong Seed,
    ulong Case,
    string? Card,
    string? Outcome,
    string? Mechanism,
    int? Step,
    double EndS,
    long Steps,
    string Hash,
    string? RecordedHash,
    string? Trouble,
    string Build,
    IReadOnlyList<RunAnswer.ColumnRow> Columns,
    IReadOnlyList<double?[]> Samples,
    IReadOnlyList<RunAnswer.StoryRow> Story)
{
    public static RunAnswer Of(RunResult r) => new(
        r.Request.Plan.Book.Title,
        r.Request.StartName,
        r.Request.Plan.Book.RoadNumberInUse,
        r.Request.Seed,
        r.Request.Case,
        r.Request.Title,
        r.Outcome?.Kind.ToString().ToLowerInvariant(),
        r.Outcome?.Mechanism,
        r.Outcome?.Step,
        r.End.Seconds,
        r.Steps,
        r.Hash.ToString("x16", System.Globalization.CultureInfo.InvariantCulture),
        r.Recorded,
        r.Trouble,
        BuildName.Text,
        [.. r.Recorder.Columns.Select(c => new ColumnRow(c.Name, c.Unit.Symbol, c.Sort.ToString().ToLowerInvariant(), c.Words.Count == 0 ? null : c.Words))],
        [.. r.Recorder.Rows.Select(row => row.Values.Select((v, i) => Finite(r.Recorder.Columns[i].InUnit(v))).Prepend(row.Time.Seconds).ToArray())],
        [.. r.Journal.Select(StoryRow.Of)]);

    private static double? Finite(double value) => double.IsFinite(value) ? value : null;

    internal sealed record ColumnRow(string Name, string Unit, string Sort, IReadOnlyList<string>? Words);

    /// <param name="Depth">0 for a step of the card itself, 1 for one of a card that it calls, and so on.</param>
    internal sealed record StoryRow(double TimeS, int? Step, int Depth, string Kind, string Text)
    {
        public static StoryRow Of(JournalEntry j) => new(j.Time.Seconds, j.Step == 0 ? null : j.Step, j.Depth, j.Kind.ToString().ToLowerInvariant(), j.Text);
    }
}
