using System.Globalization;
using System.Text;
using Sightglass.Basics.Quantities;
using Sightglass.Web.Live;
using Sightglass.World.Journal;

namespace Sightglass.Web.Machine;

/// <summary>The last half hour of one gauge, with truth beside it and what happened below: the inside of an SVG of 580 × 176.</summary>
internal static class TrendChart
{
    public const double Width = 580;
    public const double Height = 176;
    private const double Left = 40;
    private const double Right = 118;
    private const double Top = 8;
    private const double Bottom = 22;

    public static string Render(LiveGauge gauge, MachineSnapshot seen, bool truth)
    {
        double now = seen.Now.Seconds;
        double from = Math.Max(0, now - Sampler.TraceSeconds);
        double to = Math.Max(now, from + Sampler.TraceSeconds);
        TracePoint[] points = [.. seen.Trace.Where(p => p.Seconds >= from && p.Gauges[0].Reading is not null), new(now, seen.Gauges)];
        if (points[^1].Gauges.IsEmpty || points[^1].Gauges[0].Reading is null)
        {
            return "";
        }

        (double low, double high, double step) = Range(gauge, points, truth);
        double X(double t) => Left + ((Width - Left - Right) * (t - from) / (to - from));
        double Y(double v) => Top + ((Height - Top - Bottom) * (1 - ((v - low) / (high - low))));
        StringBuilder svg = new();
        for (double v = low; v <= high + (step / 2); v += step)
        {
            svg.Append(CultureInfo.InvariantCulture, $"<path class='t-grid' d='M{N(Left)} {N(Y(v))}H{N(Width - Right)}'/><text class='t-lab' x='{N(Left - 7)}' y='{N(Y(v) + 4)}' text-anchor='end'>{QuantityFormat.Number(v, gauge.Unit, step)}</text>");
        }

        for (double m = Math.Ceiling(from / 300) * 300; m <= to + 1; m += 300)
        {
            svg.Append(CultureInfo.InvariantCulture, $"<path class='t-axis' d='M{N(X(m))} {N(Height - Bottom)}v5'/><text class='t-lab' x='{N(X(m))}' y='{N(Height - 3)}' text-anchor='middle'>{Words.Clock(m)[..^3]}</text>");
        }

        svg.Append(CultureInfo.InvariantCulture, $"<path class='t-axis' d='M{N(Left)} {N(Height - Bottom)}H{N(Width - Right)}'/>");
        string reading = Path(points, p => p.Gauges[0].Reading!.Value, X, Y);
        double last = points[^1].Gauges[0].Reading!.Value;
        double end = X(now) + 8;
        if (truth && points.All(p => p.Gauges[0].Truth is not null))
        {
            double lastTruth = points[^1].Gauges[0].Truth!.Value;
            string back = Path([.. points.Reverse()], p => p.Gauges[0].Truth!.Value, X, Y)[1..];
            svg.Append(CultureInfo.InvariantCulture, $"<path class='t-between' d='{reading}L{back}Z'/><path class='t-truth' d='{Path(points, p => p.Gauges[0].Truth!.Value, X, Y)}'/>");
            double apart = Y(lastTruth) - Y(last);
            double shift = Math.Abs(apart) < 17 ? (apart >= 0 ? 17 - apart : -17 - apart) : 0;
            svg.Append(CultureInfo.InvariantCulture, $"<text class='t-said t-true' x='{N(end)}' y='{N(Y(lastTruth) + 5 + shift)}'>truth {QuantityFormat.Text(lastTruth, gauge.Unit, gauge.Resolution)}</text>");
        }

        svg.Append(CultureInfo.InvariantCulture, $"<path class='t-line' d='{reading}'/><text class='t-said' x='{N(end)}' y='{N(Y(last) + 5)}'>shows {QuantityFormat.Text(last, gauge.Unit, gauge.Resolution)}</text>");
        foreach (JournalEntry entry in seen.Journal.Where(j => j.Time.Seconds >= from && (truth || j.Kind != JournalKind.Truth)))
        {
            svg.Append(CultureInfo.InvariantCulture, $"<path class='{(entry.Kind == JournalKind.Truth ? "t-tick t-true" : "t-tick")}' d='M{N(X(entry.Time.Seconds))} {N(Height - Bottom - 1)}v-9'/>");
        }

        return svg.ToString();
    }

    /// <summary>A stretch of the scale in round steps with room above and below.</summary>
    private static (double Low, double High, double Step) Range(LiveGauge gauge, TracePoint[] points, bool truth)
    {
        double[] all = [.. points.Select(p => p.Gauges[0].Reading!.Value), .. truth ? points.Select(p => p.Gauges[0].Truth ?? p.Gauges[0].Reading!.Value) : []];
        double step = (gauge.Maximum - gauge.Minimum) / 10;
        double low = Math.Floor(((all.Min() - gauge.Minimum) / step) - 0.3);
        double high = Math.Ceiling(((all.Max() - gauge.Minimum) / step) + 0.3);
        while (high - low < 4)
        {
            (low, high) = low > 0 ? (low - 1, high) : (low, high + 1);
        }

        return (gauge.Minimum + (low * step), gauge.Minimum + (high * step), step);
    }

    private static string Path(TracePoint[] points, Func<TracePoint, double> of, Func<double, double> x, Func<double, double> y)
    {
        StringBuilder path = new();
        foreach (TracePoint point in points)
        {
            path.Append(path.Length == 0 ? 'M' : 'L').Append(N(x(point.Seconds))).Append(' ').Append(N(y(of(point))));
        }

        return path.ToString();
    }

    private static string N(double value) => TraceGauge.N(value);
}
