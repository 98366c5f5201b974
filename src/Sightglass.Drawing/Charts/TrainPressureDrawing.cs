using System.Collections.Immutable;
using Sightglass.Basics.Language;
using Sightglass.Drawing.Svg;
using Sightglass.Drawing.Text;

namespace Sightglass.Drawing.Charts;

/// <summary>
/// Draws the pressure along a train as a family of curves over the train itself: one for each of a few moments, the time written on it, the first thin and the last heavy.
/// </summary>
public static class TrainPressureDrawing
{
    private const double Margin = 24;
    private const double TitleHead = 92;
    private const double BareHead = 34;
    private const double Axis = 30;

    /// <summary>Steps of the scale at least, so that a steady pipe looks steady.</summary>
    private const int LeastSteps = 4;

    private const double Train = 34;

    /// <summary>The picture as SVG.</summary>
    public static string Render(TrainPressure train, SvgOptions? svg = null)
    {
        ArgumentNullException.ThrowIfNull(train);
        svg ??= SvgOptions.Alone;
        double height = Head(train) + train.Height + Axis + (train.Vehicles.IsEmpty ? 0 : Train + 12) + Margin;
        SvgWriter w = SvgDocument.Begin(svg, "chart", 0, 0, train.Width, height, Words(train));
        if (train.ShowsTitle)
        {
            w.Text("c-title", Margin, 34, train.Title).Text("c-words", Margin, 56, train.Lead);
        }

        ImmutableArray<int> chosen = CurveChoice.Of(train);
        ChartScale scale = ScaleOf(train, chosen);
        Grid(w, train, scale);
        Curves(w, train, chosen, scale);
        Vehicles(w, train, scale);
        return SvgDocument.End(w);
    }

    private static ChartScale ScaleOf(TrainPressure train, ImmutableArray<int> chosen)
    {
        double[] values = [.. chosen.SelectMany(i => train.Moments[i].Pressures).Where(double.IsFinite).DefaultIfEmpty(0)];
        double step = ChartTicks.RoundStep(Math.Max(values.Max() - values.Min(), 5), 6);
        double high = Math.Ceiling((values.Max() / step) - 1e-9) * step;
        double low = Math.Floor((Math.Min(values.Min(), high - (LeastSteps * step)) / step) + 1e-9) * step;
        double left = Margin + 14 + TextMeasure.Width(ChartNumber.Text(high, ChartNumber.DecimalsFor(step)), TextFace.Sans400, 13);
        IEnumerable<double> ends = train.Positions.Concat(train.Vehicles.SelectMany(v => new[] { v.From, v.To })).DefaultIfEmpty(0);
        (double x0, double x1) = (ends.Min(), ends.Max());
        return new(x0, x1 > x0 ? x1 : x0 + 1, low, high > low ? high : low + step, left, train.Width - Margin, Head(train), Head(train) + train.Height);
    }

    private static double Head(TrainPressure train) => train.ShowsTitle ? TitleHead : BareHead;

    private static void Grid(SvgWriter w, TrainPressure train, ChartScale scale)
    {
        ImmutableArray<double> ups = ChartTicks.Round(scale.Y0, scale.Y1, 6);
        int decimals = ChartNumber.DecimalsFor(ChartTicks.RoundStep(scale.Y1 - scale.Y0, 6));
        foreach (double value in ups)
        {
            w.Path("c-grid", new SvgPath().Segment(scale.Left, scale.Y(value), scale.Right, scale.Y(value)));
            w.Text("c-lab", scale.Left - 8, scale.Y(value) + 4.5, ChartNumber.Text(value, decimals), ("text-anchor", "end"));
        }

        w.Text("c-lab", scale.Left - 8, scale.High - 14, train.Unit, ("text-anchor", "end"));
        TimeChartDrawing.Axis(w, scale, false, "m");
    }

    private static void Curves(SvgWriter w, TrainPressure train, ImmutableArray<int> chosen, ChartScale scale)
    {
        List<(IReadOnlyList<(double X, double Y)> Points, string Name)> curves = [];
        foreach (int i in chosen)
        {
            (double time, ImmutableArray<double> pressures) = train.Moments[i];
            (double X, double Y)[] points = [.. train.Positions.Zip(pressures).Where(p => double.IsFinite(p.Second)).Select(p => (scale.X(p.First), scale.Y(p.Second)))];
            if (points.Length > 1)
            {
                curves.Add((points, Time(train, time)));
            }
        }

        for (int i = 0; i < curves.Count; i++)
        {
            double weight = 1.1 + (1.7 * i / Math.Max(curves.Count - 1, 1));
            w.Path("c-curve", ChartLine.Path(curves[i].Points), ("stroke-width", SvgNumber.Format(weight)));
        }

        (double X, double Y)?[] at = CurveLabels.Place([.. curves.Select(c => c.Points)], [.. curves.Select(c => c.Name)]);
        for (int i = 0; i < curves.Count; i++)
        {
            if (at[i] is { } place)
            {
                double half = (TextMeasure.Width(curves[i].Name, TextFace.Sans400, 13) / 2) + 3;
                w.Path("paper", new SvgPath().Rectangle(place.X - half, place.Y - 8, 2 * half, 16));
                w.Text("c-lab c-on", place.X, place.Y + 4.5, curves[i].Name, ("text-anchor", "middle"));
            }
        }
    }

    private static void Vehicles(SvgWriter w, TrainPressure train, ChartScale scale)
    {
        double top = scale.Low + Axis + 12;
        foreach (TrainVehicle v in train.Vehicles)
        {
            double left = scale.X(v.From) + 1.5;
            double width = Math.Max(scale.X(v.To) - 1.5 - left, 1);
            w.Open("g").Title(Say.Book(v.Name));
            w.Path(v.IsLocomotive ? "c-vehicle c-locomotive" : "c-vehicle", new SvgPath().Rectangle(left, top, width, Train - 12));
            if (TextMeasure.Width(Say.Book(v.Name), TextFace.Sans400, 13) <= width - 8)
            {
                w.Text(v.IsLocomotive ? "c-lab c-in" : "c-lab", left + (width / 2), top + 15.5, Say.Book(v.Name), ("text-anchor", "middle"));
            }

            w.Close();
        }
    }

    private static string Words(TrainPressure train)
    {
        if (train.Moments.IsEmpty)
        {
            return Say.With($"{train.Title}: nothing was measured");
        }

        (double Time, ImmutableArray<double> Pressures) last = train.Moments[^1];
        double[] values = [.. last.Pressures.Where(double.IsFinite)];
        return values.Length == 0
            ? Say.With($"{train.Title}: nothing was measured")
            : train.UntilNow
                ? Say.With($"{train.Title}: now {ChartNumber.Text(values[0], 0)} {train.Unit} at the head, {ChartNumber.Text(values[^1], 0)} {train.Unit} at the rear")
                : Say.With($"{train.Title}: after {Time(train, last.Time)} {ChartNumber.Text(values[0], 0)} {train.Unit} at the head, {ChartNumber.Text(values[^1], 0)} {train.Unit} at the rear");
    }

    private static string Time(TrainPressure train, double seconds)
    {
        double shown = train.UntilNow ? train.Moments[^1].Time - seconds : seconds;
        string text = Time(shown);
        return !train.UntilNow ? text : shown < 0.05 ? Say.It("now") : Say.With($"{text} ago");
    }

    /// <summary>Seconds below two minutes, then a clock.</summary>
    private static string Time(double seconds) => seconds < 120 ? $"{ChartNumber.Text(seconds, seconds < 10 && seconds != Math.Round(seconds) ? 1 : 0)} s" : ChartNumber.Clock(seconds);
}
