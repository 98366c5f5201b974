using Sightglass.Basics.Language;
using Sightglass.Drawing.Shapes;
using Sightglass.Drawing.Svg;

namespace Sightglass.Drawing.Diagram;

/// <summary>Draws closed vessels: reservoirs as capsules, cylinders with piston and rod. What is in them is a pressure, hidden truth.</summary>
internal static class DiagramVessels
{
    /// <summary>How far the ends of a capsule bulge, pixels.</summary>
    private const double Bulge = 26;

    public static void Draw(DiagramPen pen, DiagramBody vessel)
    {
        SvgWriter w = pen.Writer;
        Bounds b = vessel.Box;
        w.Open("g", ("class", "it vessel"), ("id", pen.Id("it", vessel.Node.Id)), ("data-item", vessel.Node.Id), ("role", "img"), ("aria-label", Say.Book(vessel.Node.Id)));
        if (vessel.Node.Symbol == DiagramSymbol.Cylinder)
        {
            Cylinder(w, b);
        }
        else
        {
            w.Element("rect", ("class", "d-out heavy"), ("x", b.Left), ("y", b.Low), ("width", b.Width), ("height", b.Height), ("rx", Bulge));
        }

        if (!pen.Options.Truth)
        {
            w.Close();
            return;
        }

        string group = pen.Id("tr", vessel.Node.Id);
        string text = pen.Id("lt", vessel.Node.Id);
        w.Open("g", ("class", pen.Value(group, "class")), ("id", group));
        w.Open("text", ("id", text), ("class", "truthword"), ("x", (b.Left + b.Right) / 2), ("y", b.High - 70), ("text-anchor", "middle"), ("style", pen.FontSize(1.15)))
            .Content(pen.Value(text, DiagramDelta.Text)).Close();
        w.Close();
        w.Close();
        Leak(pen, vessel);
    }

    // The piston stands two thirds of the way, its rod goes out to the right.
    private static void Cylinder(SvgWriter w, Bounds b)
    {
        double piston = b.Left + (b.Width * 0.78);
        double middle = b.High - 34;
        w.Element("rect", ("class", "d-out heavy"), ("x", b.Left), ("y", b.Low), ("width", b.Width), ("height", b.Height));
        w.Path("d-det", new SvgPath().Segment(b.Left + 10, b.High - 58, b.Right - 10, b.High - 58));
        w.Element("rect", ("class", "d-part"), ("x", b.Left + 14), ("y", b.High - 50), ("width", b.Width - 46), ("height", 32));
        w.Path("d-line", new SvgPath().Segment(piston - 22, b.High - 50, piston - 22, b.High - 18).Segment(piston - 22, middle, b.Right - 10, middle));
    }

    // Air blows: three strokes that part.
    private static void Leak(DiagramPen pen, DiagramBody vessel)
    {
        string group = pen.Id("lk", vessel.Node.Id);
        double x = vessel.Box.Right;
        double y = vessel.Box.Low + 18;
        SvgWriter w = pen.Writer;
        w.Open("g", ("id", group), ("class", pen.Value(group, "class")));
        w.Path("d-line", new SvgPath().Segment(x + 2, y - 5, x + 16, y - 14).Segment(x + 3, y, x + 19, y).Segment(x + 2, y + 5, x + 16, y + 14));
        DiagramBodies.Line(pen, pen.Id("l1", vessel.Node.Id), x + 24, y, "d-lab halo");
        DiagramBodies.Line(pen, pen.Id("l2", vessel.Node.Id), x + 24, y + Math.Ceiling(pen.Options.LabelSize * 1.25), "d-lab quiet halo");
        w.Close();
    }
}
