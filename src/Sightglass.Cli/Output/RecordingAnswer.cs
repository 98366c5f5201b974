using Sightglass.Basics.Quantities;
using Sightglass.Trials.Recordings;

namespace Sightglass.Cli.Output;

/// <summary>What <c>recording NAME --json</c> answers.</summary>
/// <param name="Rows">Of the file.</param>
/// <param name="Drawn">Of which a case of the situation has one.</param>
/// <param name="AfterS">How long the machine had to settle.</param>
internal sealed record RecordingAnswer(
    string Book,
    string Notice,
    string Recording,
    string File,
    int Rows,
    int Drawn,
    string From,
    string To,
    string? Situation,
    double AfterS,
    IReadOnlyList<RecordingAnswer.Column> Columns,
    IReadOnlyList<RecordingAnswer.Moment> Compared,
    bool Agrees,
    string Build)
{
    public static RecordingAnswer Of(RecordingReport report) => new(
        report.Bound.Plan.Book.Title,
        report.Bound.Plan.Book.Notice,
        report.Recording.Name,
        report.Recording.File,
        report.Table.Rows,
        report.States.Rows.Length,
        report.Table.Labels[report.States.Rows[0]],
        report.Table.Labels[report.States.Rows[^1]],
        report.Situation,
        report.After.Seconds,
        [.. report.Recording.Columns.Select(c => new Column(c.Head, [.. c.Sets], c.Compares?.Text, c.Unit is null ? null : QuantityFormat.Symbol(c.Unit)))],
        [.. report.Compared.Select(r => new Moment(report.Table.Labels[r.Row], r.Trouble, [.. report.Bound.Comparisons.Select((c, i) => new Pair(c.Column.Head, c.Name, Plain(c, r.Recorded[i]), Plain(c, r.Machine[i]), c.Agrees(r.Recorded[i], r.Machine[i])))]))],
        report.Agrees,
        BuildName.Text);

    private static string? Plain(BoundComparison comparison, double value) => double.IsNaN(value) ? null : comparison.Say(value);

    /// <param name="Sets">What it sets at the start.</param>
    /// <param name="Compares">What it is compared with, or null.</param>
    internal sealed record Column(string Head, IReadOnlyList<string> Sets, string? Compares, string? Unit);

    /// <param name="Row">The time of the row.</param>
    /// <param name="Trouble">Why the machine could not be run, or null.</param>
    internal sealed record Moment(string Row, string? Trouble, IReadOnlyList<Pair> Values);

    /// <param name="Recorded">As people read it; null where nothing was recorded.</param>
    /// <param name="Agrees">Whether they are as near as the book says.</param>
    internal sealed record Pair(string Column, string With, string? Recorded, string? Machine, bool Agrees);
}
