using Sightglass.Basics.Language;
using Sightglass.Basics.Quantities;
using Sightglass.Drawing.Charts;
using Sightglass.Drawing.Svg;
using Sightglass.Plant.Plans;
using Sightglass.Trials.Recordings;

namespace Sightglass.Paper.Reports;

/// <summary>A recording beside the machine that began with its rows, as a picture: a chart for each comparison of numbers.</summary>
public static class RecordingPlot
{
    /// <summary>The charts in one picture.</summary>
    /// <param name="report">With at least one row.</param>
    /// <param name="options">As it is embedded.</param>
    /// <param name="width">Of the picture, in its own units.</param>
    public static string Svg(RecordingReport report, SvgOptions options, double width = 1000)
    {
        ArgumentNullException.ThrowIfNull(report);
        double first = report.Table.Times[report.Compared[0].Row];
        return TimePlotDrawing.Render(
            new TimePlot
            {
                Title = $"{Say.Book(report.Bound.Plan.Book.Title)}: {Say.Book(report.Recording.Name)}",
                Lead = Say.With($"recorded, and what the machine has {QuantityFormat.Text(report.After.Seconds, UnitTable.Get("s"))} after it began with each row; from {report.Table.Labels[report.Compared[0].Row]}"),
                Charts = [.. report.Bound.Comparisons.Select((c, i) => (c, i)).Where(c => c.c.Words.IsEmpty).Select(c => Chart(report, c.c, c.i, first))],
                Width = width,
                Across = (0, Math.Max(1, report.Table.Times[report.Compared[^1].Row] - first)),
            },
            options);
    }

    private static TimeChart Chart(RecordingReport report, BoundComparison comparison, int index, double first) => new()
    {
        Title = comparison.Column.Head,
        Unit = QuantityFormat.Symbol(comparison.Column.Unit!),
        Series =
        [
            Line(report, Say.It("recorded"), r => r.Recorded[index], comparison, first),
            Line(report, QuantityWords.Of(comparison.Name), r => r.Machine[index], comparison, first),
        ],
    };

    private static Series Line(RecordingReport report, string name, Func<ComparedRow, double> value, BoundComparison comparison, double first)
    {
        (double X, double Y)[] points = [.. report.Compared.Where(r => double.IsFinite(value(r))).Select(r => (report.Table.Times[r.Row] - first, comparison.Column.Unit!.FromSi(value(r))))];
        return new(name, [.. points]) { End = points.Length == 0 ? name : $"{name} {comparison.Say(comparison.Column.Unit!.ToSi(points[^1].Y))}" };
    }
}
