using System.Collections.Immutable;
using Sightglass.Basics.Language;
using Sightglass.Basics.Quantities;
using Sightglass.Cli.Runs;
using Sightglass.Drawing.Charts;
using Sightglass.Drawing.Svg;
using Sightglass.Plant.Plans;
using Sightglass.World.Journal;

namespace Sightglass.Cli.Reports;

/// <summary>A run as a picture: a chart for each unit, a band for each control and condition.</summary>
internal static class RunPlot
{
    /// <summary>Lines in one chart; more of one unit go on in the next.</summary>
    private const int MostLines = 4;

    public static string Svg(RunResult result, Theme theme)
    {
        ArgumentNullException.ThrowIfNull(result);
        (Column Column, int Index)[] columns = [.. result.Recorder.Columns.Select((c, i) => (c, i))];
        string road = result.Request.Plan.Book.RoadNumberInUse is { } number ? $" {number}" : "";
        TimePlot plot = new()
        {
            Title = $"{Say.Book(result.Request.Plan.Book.Title)}{road}: {Say.Book(result.Request.StartName)}",
            Lead = result.Request.Title is { } card
                ? Say.With($"case {result.Request.Case}, seed {result.Request.Seed}, by the card \u201c{card}\u201d")
                : Say.With($"case {result.Request.Case}, seed {result.Request.Seed}"),
            Charts = [.. columns.Where(c => c.Column.Sort == ColumnSort.Quantity).GroupBy(c => QuantityFormat.Symbol(c.Column.Unit)).SelectMany(g => g.Chunk(MostLines).Select(c => Chart(result, g.Key, c)))],
            Bands = [.. columns.Where(c => c.Column.Sort != ColumnSort.Quantity).Select(c => Band(result, c.Column, c.Index))],
            Across = (0, result.End.Seconds),
        };
        return TimePlotDrawing.Render(plot, SvgOptions.Alone with { Theme = theme });
    }

    private static TimeChart Chart(RunResult result, string unit, (Column Column, int Index)[] columns) => new()
    {
        Title = string.Join(", ", columns.Select(c => QuantityWords.Of(c.Column.Name))),
        Unit = unit,
        Series = [.. columns.Select(c => Line(result, c.Column, c.Index))],
        Events = [.. result.Journal.Select(j => new ChartEvent(j.Time.Seconds, j.Text, j.Kind == JournalKind.Truth))],
    };

    private static Series Line(RunResult result, Column column, int index)
    {
        ImmutableArray<(double X, double Y)> points = [.. result.Recorder.Rows.Select(r => (r.Time.Seconds, column.InUnit(r.Values[index]))).Where(p => double.IsFinite(p.Item2))];
        string end = points.IsEmpty ? "" : column.Text(result.Recorder.Rows.Last(r => double.IsFinite(r.Values[index])).Values[index]);
        string named = $"{QuantityWords.Of(column.Name)} {end}";
        return new(QuantityWords.Of(column.Name), points, column.IsTruth) { End = column.IsTruth ? Say.With($"truth {named}") : named };
    }

    private static TimeBand Band(RunResult result, Column column, int index)
    {
        List<(double X, string Words)> changes = [];
        foreach ((Basics.Time.SimTime time, double[] values) in result.Recorder.Rows)
        {
            string words = column.Sort == ColumnSort.Quantity ? column.Text(values[index]) : Say.Word(column.Text(values[index]));
            if (changes.Count == 0 || changes[^1].Words != words)
            {
                changes.Add((time.Seconds, words));
            }
        }

        return new(QuantityWords.Of(column.Name), [.. changes], column.IsTruth) { Heavy = column.Sort == ColumnSort.Condition ? Say.Word("yes") : null };
    }
}
