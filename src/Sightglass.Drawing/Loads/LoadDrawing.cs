using Sightglass.Basics.Language;
using Sightglass.Drawing.Shapes;
using Sightglass.Drawing.Svg;

namespace Sightglass.Drawing.Loads;

/// <summary>Draws a vehicle from above with the load of each of its wheels as a bar beside it, its springs, and what lies on it.</summary>
public static class LoadDrawing
{
    private const double Type = LoadLayout.Type;

    /// <summary>m of radius of the circle for one kilogram; its area goes with the weight.</summary>
    private const double CircleOf = 0.0105;

    /// <summary>A layout as SVG.</summary>
    public static string Render(LoadLayout layout, LoadState state, SvgOptions? svg = null)
    {
        ArgumentNullException.ThrowIfNull(layout);
        ArgumentNullException.ThrowIfNull(state);
        Bounds sheet = layout.Sheet;
        SvgWriter w = SvgDocument.Begin(svg ?? SvgOptions.Inline, "chart loads", sheet.Left, sheet.Low, sheet.Width, sheet.Height, layout.Input.Title);
        Body(w, layout);
        foreach (LoadPoint mass in layout.Input.Masses)
        {
            Mass(w, layout, state, mass);
        }

        foreach (LoadAxle axle in layout.Input.Axles)
        {
            Axle(w, layout, axle);
        }

        foreach (LoadPoint spring in layout.Input.Springs)
        {
            Spring(w, layout, state, spring);
        }

        foreach (LoadBar bar in layout.Bars)
        {
            Bar(w, layout, bar);
        }

        return SvgDocument.End(w);
    }

    private static void Body(SvgWriter w, LoadLayout layout)
    {
        LoadInput input = layout.Input;
        LoadMap map = layout.Map;
        double half = (map.Upright ? layout.Body.Width : layout.Body.Height) / 2;
        (double front, double rear) = input.IsTurned ? (input.To, input.From) : (input.From, input.To);
        double nose = Math.Sign(rear - front) * 1.1;
        SvgPath path = new();
        (double X, double Y)[] corners = [map.Point(front, 0.55 * half), map.Point(front + nose, half), map.Point(rear, half), map.Point(rear, -half), map.Point(front + nose, -half), map.Point(front, -0.55 * half)];
        path.Move(corners[0].X, corners[0].Y);
        foreach ((double x, double y) in corners.Skip(1))
        {
            path.Line(x, y);
        }

        w.Path("d-out", path.Close());
        (double atX, double atY) = map.Point(front - (Math.Sign(rear - front) * (map.Upright ? 0.5 : 0.25)), 0);
        w.Text("plan-front", atX, atY + (map.Upright ? 0 : 4), Say.It("front"), ("text-anchor", map.Upright ? "middle" : input.IsTurned ? "start" : "end"));
        double middle = (input.From + input.To) / 2;
        foreach (bool right in new[] { true, false })
        {
            double side = right != input.IsTurned ? 1 : -1;
            (double x, double y) = map.Point(middle, side * (half + (map.Upright ? 46 : 26)));
            w.Text("plan-front", x, y + 4, right ? Say.It("right") : Say.It("left"), ("text-anchor", "middle"));
        }
    }

    private static void Mass(SvgWriter w, LoadLayout layout, LoadState state, LoadPoint mass)
    {
        (double x, double y) = layout.PointOf(mass);
        bool shown = state.ShowTruth && state.Masses.ContainsKey(mass.Id);
        double kilograms = shown ? state.Masses[mass.Id] : 0;
        w.Open("g").Title(shown ? $"{mass.Label}: {layout.Text(kilograms)}" : mass.Label)
            .Element("circle", ("class", "d-tint"), ("cx", x), ("cy", y), ("r", 2.5));
        double radius = CircleOf * Math.Sqrt(kilograms) * layout.Map.Scale;
        if (radius > 2.5)
        {
            w.Element("circle", ("class", "truth-line"), ("cx", x), ("cy", y), ("r", Math.Min(radius, 34)));
        }

        if (radius > 15)
        {
            w.Text("num-lab truth-num halo", x, y + 4.5, layout.Text(kilograms), ("text-anchor", "middle"));
        }

        w.Close();
    }

    private static void Axle(SvgWriter w, LoadLayout layout, LoadAxle axle)
    {
        double half = (layout.Map.Upright ? layout.Body.Width : layout.Body.Height) / 2;
        (double fromX, double fromY) = layout.Map.Point(axle.X, half * 0.43);
        (double toX, double toY) = layout.Map.Point(axle.X, -half * 0.43);
        w.Path("d-line", new SvgPath().Segment(fromX, fromY, toX, toY));
        (double x, double y) = layout.Map.Point(axle.X, 0);
        w.Text("num-lab halo", x, y + 4.5, axle.Label, ("text-anchor", "middle"));
    }

    // A coil from above.
    private static void Spring(SvgWriter w, LoadLayout layout, LoadState state, LoadPoint spring)
    {
        (double x, double y) = layout.PointOf(spring);
        bool wrong = state.ShowTruth && state.Wrong.ContainsKey(spring.Id);
        w.Open("g").Title(wrong ? $"{spring.Label}: {Say.Word(state.Wrong[spring.Id])}" : spring.Label);
        w.Element("circle", ("class", wrong ? "bad" : "d-part"), ("cx", x), ("cy", y), ("r", wrong ? 6.5 : 4.5));
        w.Element("circle", ("class", wrong ? "d-part" : "d-tint"), ("cx", x), ("cy", y), ("r", 2)).Close();
    }

    private static void Bar(SvgWriter w, LoadLayout layout, LoadBar bar)
    {
        Rect(w, "d-solid", bar.Tread, 2);
        bool over = bar.Over > 0;
        string style = !bar.IsRead ? "truth-line" : over ? "bad" : "d-ink";
        Rect(w, "c-well", bar.Room, 0);
        if (bar.Known is { } known)
        {
            Rect(w, style, known, 0);
        }

        if (bar.Limit is { } limit)
        {
            w.Path("load-most", new SvgPath().Segment(limit.FromX, limit.FromY, limit.ToX, limit.ToY));
        }

        if (bar.Real is var (x, y))
        {
            w.Path("truth-mark", new SvgPath().Move(x - 6, y).Line(x, y - 6).Line(x + 6, y).Line(x, y + 6).Close());
        }

        if (bar.Known is null && layout.Options.WriteIn)
        {
            w.Path("d-det", new SvgPath().Segment(bar.Number.Left, bar.Number.High, bar.Number.Right, bar.Number.High));
        }

        if (bar.Text.Length > 0)
        {
            string words = over ? "bad-words" : bar.IsRead ? "num-lab strong" : "num-lab truth-num";
            w.Text(words, (bar.Number.Left + bar.Number.Right) / 2, bar.Number.High - 2.5, bar.Text, ("text-anchor", "middle"));
        }
    }

    private static void Rect(SvgWriter w, string style, Bounds box, double round) =>
        w.Element("rect", ("class", style), ("x", box.Left), ("y", box.Low), ("width", box.Width), ("height", box.Height), ("rx", round > 0 ? SvgNumber.Format(round) : null));
}
