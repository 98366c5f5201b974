using Sightglass.Drawing.Svg;

namespace Sightglass.Drawing.Charts;

/// <summary>Lines of many points as paths of few: what falls on one pixel column becomes its extremes.</summary>
internal static class ChartLine
{
    /// <summary>Points in pixels, in order of x.</summary>
    public static List<(double X, double Y)> Thin(IEnumerable<(double X, double Y)> points, double width)
    {
        List<(double X, double Y)> all = [.. points];
        if (all.Count <= 4 * width)
        {
            return all;
        }

        List<(double X, double Y)> thin = [];
        foreach (IGrouping<double, (double X, double Y)> column in all.GroupBy(p => Math.Floor(p.X)))
        {
            (double X, double Y)[] inside = [.. column];
            int low = Array.IndexOf(inside, inside.MinBy(p => p.Y));
            int high = Array.IndexOf(inside, inside.MaxBy(p => p.Y));
            thin.AddRange(new[] { 0, Math.Min(low, high), Math.Max(low, high), inside.Length - 1 }.Distinct().Select(i => inside[i]));
        }

        return thin;
    }

    public static SvgPath Path(IEnumerable<(double X, double Y)> points) => new SvgPath().Polyline(points);
}
