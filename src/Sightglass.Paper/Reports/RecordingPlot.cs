using System.Collections.Immutable;
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
    /// <summary>Width of a picture for a small screen, in its own units.</summary>
    private const double Narrow = 360;

    /// <summary>The charts in one picture.</summary>
    /// <param name="report">With at least one row.</param>
    /// <param name="options">As it is embedded.</param>
    public static string Svg(RecordingReport report, SvgOptions options)
    {
        ArgumentNullException.ThrowIfNull(report);
        return TimePlotDrawing.Render(
            new TimePlot
            {
                Title = $"{Say.Book(report.Bound.Plan.Book.Title)}: {Say.Book(report.Recording.Name)}",
                Lead = Say.With($"recorded, and what the machine has {QuantityFormat.Text(report.After.Seconds, UnitTable.Get("s"))} after it began with each row; from {report.Table.Labels[report.Compared[0].Row]}"),
                Charts = [.. Numbers(report).Select(c => Chart(report, c, QuantityWords.Of(c.Name)))],
                Across = Across(report),
            },
            options);
    }

    /// <summary>A picture for each comparison of numbers, for a small screen: called after its column, with short words beside the lines.</summary>
    /// <param name="report">With at least one row.</param>
    /// <param name="options">As they are embedded.</param>
    public static IEnumerable<string> Each(RecordingReport report, SvgOptions options)
    {
        ArgumentNullException.ThrowIfNull(report);
        return Numbers(report).Select(c => TimePlotDrawing.Render(new TimePlot { Title = c.Column.Head, Charts = [Chart(report, c, Say.It("computed"))], Across = Across(report), Width = Narrow }, options));
    }

    private static IEnumerable<BoundComparison> Numbers(RecordingReport report) => report.Bound.Comparisons.Where(c => c.Words.IsEmpty);

    private static (double, double) Across(RecordingReport report) => (0, Math.Max(1, report.Table.Times[report.Compared[^1].Row] - First(report)));

    private static double First(RecordingReport report) => report.Table.Times[report.Compared[0].Row];

    private static TimeChart Chart(RecordingReport report, BoundComparison comparison, string computed) => new()
    {
        Title = comparison.Column.Head,
        Unit = QuantityFormat.Symbol(comparison.Column.Unit!),
        Series = [Line(report, Say.It("recorded"), r => r.Recorded, comparison), Line(report, computed, r => r.Machine, comparison)],
    };

    private static Series Line(RecordingReport report, string name, Func<ComparedRow, ImmutableArray<double>> values, BoundComparison comparison)
    {
        int index = report.Bound.Comparisons.IndexOf(comparison);
        (double X, double Y)[] points = [.. report.Compared.Where(r => double.IsFinite(values(r)[index])).Select(r => (report.Table.Times[r.Row] - First(report), comparison.Column.Unit!.FromSi(values(r)[index])))];
        return new(name, [.. points]) { End = points.Length == 0 ? name : $"{name} {comparison.Say(comparison.Column.Unit!.ToSi(points[^1].Y))}" };
    }
}
