using System.Collections.Immutable;
using Sightglass.Basics.Quantities;
using Sightglass.Book.Model;
using Sightglass.Drawing.Charts;
using Sightglass.Drawing.Svg;

namespace Sightglass.Drawing.Instruments;

/// <summary>
/// A control, an instrument or a lamp drawn as the thing that it is, 132 × 104 px, for somebody who stands before it: a handle in line is open and across is closed, a pointer stands on its
/// scale, and no number is written beside it: it is to be read.
/// </summary>
public static class InstrumentDrawing
{
    private const double Width = 132;
    private const double Height = 104;
    private const double X = Width / 2;
    private const double Y = Height / 2;

    /// <summary>Of the whole turn of a dial's pointer, degrees.</summary>
    private const double Sweep = 270;

    private static readonly string[] s_inLine = ["open", "in line", "cut in"];
    private static readonly string[] s_up = ["on", "closed", "set"];

    /// <summary>The drawing as SVG.</summary>
    /// <param name="look">What is drawn.</param>
    /// <param name="label">What a reader is told of it.</param>
    /// <param name="svg">How it is written.</param>
    public static string Render(InstrumentLook look, string label, SvgOptions? svg = null)
    {
        ArgumentNullException.ThrowIfNull(look);
        SvgWriter w = SvgDocument.Begin(svg ?? SvgOptions.Inline, "instrument", 0, 0, Width, Height, label);
        Item item = look.Item;
        string symbol = item.Kind.Symbol;
        if (look.Shows is { } shows && item.Reading is { } reading)
        {
            if (symbol.Contains("glass", StringComparison.Ordinal))
            {
                Glass(w, reading, shows);
            }
            else
            {
                Dial(w, reading, shows);
            }
        }
        else if (look.IsLit is { } lit)
        {
            Lamp(w, lit);
        }
        else if (look.Position is { } position && item.Positions.Length > 0)
        {
            Control(w, item, symbol, position);
        }
        else
        {
            Thing(w);
        }

        return SvgDocument.End(w);
    }

    private static void Control(SvgWriter w, Item item, string symbol, string position)
    {
        int at = item.Positions.IndexOf(position);
        if (symbol is "button" or "cut-off")
        {
            Button(w, symbol == "cut-off", at);
        }
        else if (symbol is "door" or "coupling" or "jumper" or "port" or "fill" or "box")
        {
            Cover(w, at > 0);
        }
        else if (item.Positions.Length == 2 && !symbol.Contains("valve", StringComparison.Ordinal))
        {
            Toggle(w, s_up.Contains(position, StringComparer.Ordinal) || (!item.Positions.Any(p => s_up.Contains(p, StringComparer.Ordinal)) && at > 0));
        }
        else if (item.Positions.Length > 2)
        {
            Selector(w, item.Positions.Length, at);
        }
        else
        {
            Handle(w, s_inLine.Contains(position, StringComparer.Ordinal) || (!item.Positions.Any(p => s_inLine.Contains(p, StringComparer.Ordinal)) && at == 0));
        }
    }

    /// <summary>A cock on its pipe.</summary>
    private static void Handle(SvgWriter w, bool inLine)
    {
        w.Path("d-line", new SvgPath().Segment(8, Y - 9, X - 24, Y - 9).Segment(8, Y + 9, X - 24, Y + 9).Segment(X + 24, Y - 9, Width - 8, Y - 9).Segment(X + 24, Y + 9, Width - 8, Y + 9));
        w.Element("circle", ("class", "d-out"), ("cx", X), ("cy", Y), ("r", 24));
        w.Element("circle", ("class", "d-part"), ("cx", X), ("cy", Y), ("r", 14));
        w.Open("g", ("class", "i-turn"), ("transform", FormattableString.Invariant($"rotate({(inLine ? 0 : 90)} {X:0} {Y:0})")));
        w.Element("rect", ("class", "i-bar"), ("x", X - 9), ("y", Y - 6), ("width", 55), ("height", 12), ("rx", 6));
        w.Close();
        w.Element("circle", ("class", "d-part"), ("cx", X), ("cy", Y), ("r", 3.5));
    }

    private static void Selector(SvgWriter w, int positions, int at)
    {
        double step = Math.Min(40, Sweep / Math.Max(1, positions - 1));
        double first = -90 - (step * (positions - 1) / 2);
        for (int i = 0; i < positions; i++)
        {
            (double dx, double dy) = Direction(first + (i * step));
            w.Path(i == at ? "d-line i-at" : "d-line", new SvgPath().Segment(X + (33 * dx), Y + 6 + (33 * dy), X + (41 * dx), Y + 6 + (41 * dy)));
        }

        w.Element("circle", ("class", "d-out"), ("cx", X), ("cy", Y + 6), ("r", 27));
        w.Open("g", ("class", "i-turn"), ("transform", FormattableString.Invariant($"rotate({first + (at * step):0.##} {X:0} {Y + 6:0})")));
        w.Element("rect", ("class", "i-bar"), ("x", X - 20), ("y", Y), ("width", 46), ("height", 12), ("rx", 6));
        w.Close();
    }

    private static void Toggle(SvgWriter w, bool up)
    {
        w.Element("rect", ("class", "d-out"), ("x", X - 22), ("y", Y - 38), ("width", 44), ("height", 76), ("rx", 4));
        w.Element("rect", ("class", "d-part"), ("x", X - 10), ("y", Y - 24), ("width", 20), ("height", 48), ("rx", 3));
        w.Element("rect", ("class", "i-bar"), ("x", X - 10), ("y", up ? Y - 24 : Y + 2), ("width", 20), ("height", 22), ("rx", 3));
    }

    private static void Button(SvgWriter w, bool emergency, int at)
    {
        w.Element("rect", ("class", "d-out"), ("x", X - 36), ("y", Y - 36), ("width", 72), ("height", 72), ("rx", 5));
        w.Element("circle", ("class", "d-part"), ("cx", X), ("cy", Y), ("r", 26));
        w.Element("circle", ("class", emergency ? "i-emergency" : "i-push"), ("cx", X), ("cy", Y), ("r", at > 0 ? 17 : 21));
        if (at > 0)
        {
            w.Element("circle", ("class", "d-det"), ("cx", X), ("cy", Y), ("r", 21));
        }
    }

    /// <summary>What opens, is plugged or is taken off.</summary>
    private static void Cover(SvgWriter w, bool moved)
    {
        w.Element("rect", ("class", "d-out"), ("x", X - 32), ("y", Y - 36), ("width", 64), ("height", 72), ("rx", 3));
        if (moved)
        {
            w.Path("d-part", new SvgPath().Polyline([(X - 32, Y - 36), (X - 58, Y - 24), (X - 58, Y + 44), (X - 32, Y + 36)]).Close());
        }
        else
        {
            w.Element("rect", ("class", "d-part"), ("x", X - 27), ("y", Y - 31), ("width", 54), ("height", 62), ("rx", 2));
            w.Element("rect", ("class", "i-bar"), ("x", X + 14), ("y", Y - 8), ("width", 6), ("height", 16), ("rx", 2));
        }
    }

    private static void Lamp(SvgWriter w, bool lit)
    {
        w.Element("circle", ("class", "d-out"), ("cx", X), ("cy", Y), ("r", 26));
        w.Element("circle", ("class", lit ? "i-lens lit" : "i-lens"), ("cx", X), ("cy", Y), ("r", 19));
        if (!lit)
        {
            return;
        }

        SvgPath rays = new();
        for (int i = 0; i < 8; i++)
        {
            (double dx, double dy) = Direction(22.5 + (i * 45));
            rays.Segment(X + (31 * dx), Y + (31 * dy), X + (40 * dx), Y + (40 * dy));
        }

        w.Path("i-rays", rays);
    }

    private static void Thing(SvgWriter w)
    {
        w.Element("rect", ("class", "d-part"), ("x", X - 30), ("y", Y - 26), ("width", 60), ("height", 52), ("rx", 3));
        w.Path("d-det", new SvgPath().Segment(X - 22, Y - 14, X + 22, Y - 14).Segment(X - 22, Y, X + 22, Y).Segment(X - 22, Y + 14, X + 22, Y + 14));
    }

    private static void Dial(SvgWriter w, Reading reading, double shows)
    {
        double from = reading.Unit.FromSi(reading.Minimum);
        double to = reading.Unit.FromSi(reading.Maximum);
        const double centre = Y + 2;
        w.Element("circle", ("class", "d-out"), ("cx", X), ("cy", centre), ("r", 46));
        foreach (double tick in ChartTicks.Multiples(from, to, ChartTicks.RoundStep(to - from, 20)))
        {
            (double dx, double dy) = Direction(Angle(tick, from, to));
            w.Path("d-det", new SvgPath().Segment(X + (42 * dx), centre + (42 * dy), X + (45 * dx), centre + (45 * dy)));
        }

        double step = ChartTicks.RoundStep(to - from, 5);
        foreach (double tick in ChartTicks.Multiples(from, to, step))
        {
            (double dx, double dy) = Direction(Angle(tick, from, to));
            w.Path("d-line", new SvgPath().Segment(X + (38 * dx), centre + (38 * dy), X + (45 * dx), centre + (45 * dy)));
            w.Text("i-number", X + (28 * dx), centre + (28 * dy) + 3.5, ChartNumber.Text(tick, ChartNumber.DecimalsFor(step)), ("text-anchor", "middle"));
        }

        w.Text("i-unit", X, centre + 40, QuantityFormat.Symbol(reading.Unit), ("text-anchor", "middle"));
        double pointed = Math.Clamp(reading.Unit.FromSi(shows), from - ((to - from) * 0.02), to + ((to - from) * 0.02));
        w.Open("g", ("class", "i-turn"), ("transform", FormattableString.Invariant($"rotate({Angle(pointed, from, to):0.##} {X:0} {centre:0})")));
        w.Path("d-ink", new SvgPath().Polyline([(X - 9, centre - 2.2), (X + 40, centre - 0.6), (X + 40, centre + 0.6), (X - 9, centre + 2.2)]).Close());
        w.Close();
        w.Element("circle", ("class", "d-ink"), ("cx", X), ("cy", centre), ("r", 4));
    }

    private static void Glass(SvgWriter w, Reading reading, double shows)
    {
        const double top = 8;
        const double bottom = Height - 8;
        double from = reading.Unit.FromSi(reading.Minimum);
        double to = reading.Unit.FromSi(reading.Maximum);
        double level = Level(Math.Clamp(reading.Unit.FromSi(shows), from, to));
        w.Element("rect", ("class", "d-out"), ("x", X - 30), ("y", top - 5), ("width", 22), ("height", bottom - top + 10), ("rx", 4));
        w.Element("rect", ("class", "d-glass"), ("x", X - 25), ("y", top), ("width", 12), ("height", bottom - top), ("rx", 2));
        w.Element("rect", ("class", "i-liquid"), ("x", X - 24.5), ("y", level), ("width", 11), ("height", Math.Max(0, bottom - level)));
        foreach (double tick in ChartTicks.Multiples(from, to, ChartTicks.RoundStep(to - from, 18)))
        {
            w.Path("d-det", new SvgPath().Segment(X - 6, Level(tick), X - 1, Level(tick)));
        }

        double step = ChartTicks.RoundStep(to - from, 5);
        foreach (double tick in ChartTicks.Multiples(from, to, step))
        {
            w.Path("d-line", new SvgPath().Segment(X - 6, Level(tick), X + 3, Level(tick)));
            w.Text("i-number", X + 7, Level(tick) + 3.5, ChartNumber.Text(tick, ChartNumber.DecimalsFor(step)));
        }

        w.Text("i-unit", X + 32, top + 8, QuantityFormat.Symbol(reading.Unit));

        double Level(double value) => bottom - ((value - from) / (to - from) * (bottom - top));
    }

    private static double Angle(double value, double from, double to) => -90 - (Sweep / 2) + ((value - from) / (to - from) * Sweep);

    private static (double X, double Y) Direction(double degrees) => (Math.Cos(degrees * Math.PI / 180), Math.Sin(degrees * Math.PI / 180));
}
