using Sightglass.Basics.Language;
using Sightglass.Drawing.Shapes;
using Sightglass.Drawing.Svg;
using M = Sightglass.Drawing.Diagram.DiagramMeasure;

namespace Sightglass.Drawing.Diagram;

/// <summary>Draws tanks with their levels, glasses and leaks, and machines.</summary>
internal static class DiagramBodies
{
    public static void Draw(DiagramPen pen)
    {
        foreach (DiagramBody body in pen.Layout.Bodies)
        {
            if (body.Node.IsClosed)
            {
                DiagramVessels.Draw(pen, body);
            }
            else if (body.Node.Role == DiagramRole.Tank)
            {
                Tank(pen, body);
            }
            else
            {
                Machine(pen, body);
            }
        }

        foreach (DiagramGlass glass in pen.Layout.Glasses)
        {
            Glass(pen, glass);
        }

        pen.Writer.Break();
    }

    /// <summary>The vessel's inside, open above.</summary>
    public static SvgPath TankShape(DiagramBody tank, double inset)
    {
        Bounds b = tank.Box;
        const double corner = 12;
        return new SvgPath().Move(b.Left + inset, b.Low).Vertical(b.High - corner).Quadratic(b.Left + inset, b.High - inset, b.Left + corner, b.High - inset)
            .Horizontal(b.Right - corner).Quadratic(b.Right - inset, b.High - inset, b.Right - inset, b.High - corner).Vertical(b.Low);
    }

    private static void Tank(DiagramPen pen, DiagramBody tank)
    {
        SvgWriter w = pen.Writer;
        Bounds b = tank.Box;
        w.Open("g", ("class", "it tank"), ("id", pen.Id("it", tank.Node.Id)), ("data-item", tank.Node.Id), ("role", "img"), ("aria-label", Say.Book(tank.Node.Id)));
        w.Path("d-out heavy", TankShape(tank, 0)).Path("d-line", new SvgPath().Segment(b.Left - 5, b.Low, b.Right + 5, b.Low));
        if (tank.Vent is { } vent)
        {
            w.Path("d-line", new SvgPath().Move(vent, b.Low).Vertical(b.Low - 16).Quadratic(vent, b.Low - 23, vent + 7, b.Low - 23).Horizontal(vent + 10));
            w.Path("d-det", new SvgPath().Polyline([(vent + 12, b.Low - 27), (vent + 18, b.Low - 23), (vent + 12, b.Low - 19)]));
        }

        if (pen.Options.Truth)
        {
            Truth(pen, tank);
        }

        w.Close();
        if (pen.Options.Truth)
        {
            Leak(pen, tank);
        }
    }

    private static void Truth(DiagramPen pen, DiagramBody tank)
    {
        SvgWriter w = pen.Writer;
        Bounds b = tank.Box;
        string group = pen.Id("tr", tank.Node.Id);
        string level = pen.Id("lv", tank.Node.Id);
        string surface = pen.Id("ls", tank.Node.Id);
        string text = pen.Id("lt", tank.Node.Id);
        w.Open("g", ("class", pen.Value(group, "class")), ("id", group)).Open("g", ("clip-path", $"url(#{pen.Id("cp", tank.Node.Id)})"));
        w.Element("rect", ("id", level), ("x", b.Left), ("y", pen.Value(level, "y")), ("width", b.Width), ("height", pen.Value(level, "height")), ("fill", pen.Reference("truth")));
        w.Element("line", ("id", surface), ("class", "truth-line"), ("x1", b.Left), ("x2", b.Right), ("y1", pen.Value(surface, "y1")), ("y2", pen.Value(surface, "y2")));
        w.Close();
        w.Open("text", ("id", text), ("class", "truthword halo"), ("x", (b.Left + b.Right) / 2), ("y", pen.Value(text, "y")), ("text-anchor", "middle"), ("style", pen.FontSize(1.15)))
            .Content(pen.Value(text, DiagramDelta.Text)).Close();
        w.Close();
    }

    // Out of the foot at the right, on to the ground.
    private static void Leak(DiagramPen pen, DiagramBody tank)
    {
        SvgWriter w = pen.Writer;
        string group = pen.Id("lk", tank.Node.Id);
        double x = tank.Box.Right;
        double y = tank.Box.High;
        string wet = "wet wet-" + pen.Layout.Input.Medium;
        w.Open("g", ("id", group), ("class", pen.Value(group, "class")));
        w.Path(wet + "-line", new SvgPath().Move(x - 2, y - 8).Curve(x + 4, y - 5, x + 8, y + 6, x + 9, y + 22));
        foreach (double delay in new[] { 0, 0.4, 0.8 })
        {
            w.Element("path", ("class", wet + " drop"), ("style", $"animation-delay:-{SvgNumber.Format(delay)}s"), ("d", new SvgPath().Move(x + 9, y + 20).Curve(x + 5, y + 26, x + 5, y + 28, x + 9, y + 28).Curve(x + 13, y + 28, x + 13, y + 26, x + 9, y + 20).Close().ToString()));
        }

        w.Path(wet, new SvgPath().Move(x - 16, y + 64).Quadratic(x - 8, y + 56, x + 9, y + 56).Quadratic(x + 28, y + 56, x + 36, y + 64).Close());
        Line(pen, pen.Id("l1", tank.Node.Id), x + 42, y + 36, "d-lab halo");
        Line(pen, pen.Id("l2", tank.Node.Id), x + 42, y + 36 + Math.Ceiling(pen.Options.LabelSize * 1.25), "d-lab quiet halo");
        w.Close();
    }

    /// <summary>One line of words whose text changes.</summary>
    public static void Line(DiagramPen pen, string id, double x, double y, string style, string anchor = "start") =>
        pen.Writer.Open("text", ("id", id), ("class", style), ("x", x), ("y", y), ("text-anchor", anchor == "start" ? null : anchor), ("style", pen.FontSize())).Content(pen.Value(id, DiagramDelta.Text)).Close();

    private static void Glass(DiagramPen pen, DiagramGlass glass)
    {
        SvgWriter w = pen.Writer;
        double middle = glass.X + 6;
        string level = pen.Id("gl", glass.Node.Id);
        string value = pen.Id("gv", glass.Node.Id);
        w.Open("g", ("class", "it glass"), ("id", pen.Id("it", glass.Node.Id)), ("data-item", glass.Node.Id), ("role", "img"), ("aria-label", Say.Book(glass.Node.Id)));
        w.Path("d-line", new SvgPath().Move(glass.Wall, glass.Top + 8).Horizontal(middle).Vertical(glass.Top).Move(glass.Wall, glass.Bottom - 6).Horizontal(middle).Vertical(glass.Bottom));
        w.Element("rect", ("class", "d-part"), ("x", glass.X), ("y", glass.Top), ("width", 12), ("height", glass.Bottom - glass.Top), ("rx", 6));
        w.Element("rect", ("id", level), ("class", "wet wet-" + pen.Layout.Input.Medium), ("x", glass.X + 2.2), ("y", pen.Value(level, "y")), ("width", 7.6), ("height", pen.Value(level, "height")), ("rx", 1));
        SvgPath ticks = new();
        for (int i = 0; i <= 4; i++)
        {
            double y = glass.Bottom - 2 - ((glass.Bottom - glass.Top - 4) * i / 4);
            double outer = glass.Left ? glass.X - 2 : glass.X + 14;
            ticks.Segment(outer, y, outer + ((glass.Left ? -1 : 1) * (i % 2 == 0 ? 6 : 3.5)), y);
        }

        w.Path("d-det", ticks);
        w.Open("text", ("id", value), ("class", "num-lab"), ("x", glass.Left ? glass.Wall - 8 : glass.Wall + 8), ("y", -4), ("text-anchor", glass.Left ? "end" : "start"), ("style", pen.FontSize()))
            .Content(pen.Value(value, DiagramDelta.Text)).Close();
        w.Close();
    }

    private static void Machine(DiagramPen pen, DiagramBody body)
    {
        SvgWriter w = pen.Writer;
        Bounds b = body.Box;
        double middle = (b.Left + b.Right) / 2;
        pen.Group(body.Node);
        w.Element("rect", ("class", "d-out heavy"), ("x", b.Left), ("y", b.Low), ("width", b.Width), ("height", b.Height), ("rx", 3));
        SvgPath cylinders = new();
        for (int i = 0; i < 6; i++)
        {
            double x = middle - 46 + (i * 17);
            cylinders.Polyline([(x, b.Low + 38), (x, b.Low + 16), (x + 12, b.Low + 16), (x + 12, b.Low + 38)]).Segment(x + 6, b.Low + 38, x + 6, b.Low + 48);
        }

        w.Path("d-tint", cylinders).Path("d-det", new SvgPath().Segment(middle - 48, b.Low + 38, middle + 49, b.Low + 38).Segment(middle - 48, b.Low + 62, middle + 49, b.Low + 62));
        w.Element("circle", ("class", "d-part"), ("cx", middle), ("cy", b.Low + 79), ("r", 14));
        w.Path("crank", new SvgPath().Segment(middle, b.Low + 79, middle, b.Low + 69), ("style", $"transform-origin:{SvgNumber.Format(middle)}px {SvgNumber.Format(b.Low + 79)}px"));
        w.Close();

        // Beside the group, whose name is the item's: what it does now is no part of its name.
        double line = Math.Ceiling(pen.Options.LabelSize * 1.25);
        Line(pen, pen.Id("m1", body.Node.Id), body.WordsAt, b.Low + 22 + line, "d-lab", body.WordsAnchor);
        Line(pen, pen.Id("m2", body.Node.Id), body.WordsAt, b.Low + 22 + (2 * line), "d-lab quiet", body.WordsAnchor);
    }
}
