using System.Collections.Immutable;
using Sightglass.Basics.Language;
using Sightglass.Drawing.Shapes;
using Sightglass.Drawing.Svg;

namespace Sightglass.Drawing.Diagram;

/// <summary>Draws gauges and controls with their dashed lines.</summary>
internal static class DiagramInstruments
{
    public static void Draw(DiagramPen pen)
    {
        foreach (ImmutableArray<(double X, double Y)> line in pen.Layout.Instruments.SelectMany(i => i.Lines))
        {
            pen.Writer.Path("m m-control", new SvgPath().Polyline(line));
        }

        foreach (DiagramInstrument instrument in pen.Layout.Instruments)
        {
            if (instrument.Node.Role == DiagramRole.Control)
            {
                Control(pen, instrument);
            }
            else if (instrument.IsLine)
            {
                Ring(pen, instrument);
            }
            else
            {
                Box(pen, instrument);
            }
        }

        pen.Writer.Break();
    }

    private static void Control(DiagramPen pen, DiagramInstrument instrument)
    {
        Bounds b = instrument.Box;
        double x = (b.Left + b.Right) / 2;
        double y = (b.Low + b.High) / 2;
        pen.Group(instrument.Node).Title(instrument.Node.Label)
            .Element("rect", ("class", "tgt"), ("x", b.Left - 8), ("y", b.Low - 2), ("width", b.Width + 16), ("height", b.Height + 4))
            .Element("rect", ("class", "d-part"), ("x", b.Left), ("y", b.Low), ("width", b.Width), ("height", b.Height), ("rx", 2));
        _ = instrument.Node.Symbol switch
        {
            DiagramSymbol.Button => pen.Writer.Element("circle", ("class", "push"), ("cx", x), ("cy", y), ("r", 4.6)),
            DiagramSymbol.Switch => pen.Writer.Path("d-line lever-bar", new SvgPath().Segment(x - 4.5, y + 3.5, x + 4.5, y - 3.5)),
            _ => pen.Writer.Path("d-line lever-bar", new SvgPath().Segment(x, y + 5, x + 3, y - 4)).Element("circle", ("class", "d-ink"), ("cx", x + 3), ("cy", y - 4), ("r", 2.2)),
        };
        pen.Writer.Close();
    }

    // ISO 1219: a ring with an arrow across.
    private static void Ring(DiagramPen pen, DiagramInstrument instrument)
    {
        Bounds b = instrument.Box;
        double x = (b.Left + b.Right) / 2;
        double y = (b.Low + b.High) / 2;
        Start(pen, instrument.Node);
        pen.Writer.Element("circle", ("class", "d-part"), ("cx", x), ("cy", y), ("r", b.Width / 2));
        pen.Writer.Path("d-line", new SvgPath().Segment(x - 5.5, y + 5.5, x + 5, y - 5).Polyline([(x + 0.5, y - 5.5), (x + 5.5, y - 5.5), (x + 5.5, y - 0.5)]));
        Value(pen, instrument.Node, b.Right + 6, y - 1 + Math.Ceiling(pen.Options.LabelSize * 1.25), "start");
        pen.Writer.Close();
    }

    private static void Box(DiagramPen pen, DiagramInstrument instrument)
    {
        Bounds b = instrument.Box;
        double line = Math.Ceiling(pen.Options.LabelSize * 1.25);
        Start(pen, instrument.Node);
        pen.Writer.Element("rect", ("class", "d-part"), ("x", b.Left), ("y", b.Low), ("width", b.Width), ("height", b.Height), ("rx", 2));
        pen.Writer.Text("d-lab strong", b.Left + 10, b.Low + line + 1, instrument.Node.Label, ("style", pen.FontSize()));
        double y = b.Low + line + 1;
        foreach (string words in DiagramPlanner.Formula(instrument.Node, pen.Options.LabelSize))
        {
            y += line;
            pen.Writer.Text("d-lab quiet", b.Left + 10, y, words, ("style", pen.FontSize()));
        }

        Value(pen, instrument.Node, b.Right - 10, b.Low + line + 1, "end");
        pen.Writer.Close();
    }

    private static void Start(DiagramPen pen, DiagramNode node) =>
        pen.Writer.Open("g", ("class", "it gauge"), ("id", pen.Id("it", node.Id)), ("data-item", node.Id), ("role", "img"), ("aria-label", Say.Book(node.Id)));

    private static void Value(DiagramPen pen, DiagramNode node, double x, double y, string anchor)
    {
        string id = pen.Id("gv", node.Id);
        pen.Writer.Open("text", ("id", id), ("class", "num-lab strong"), ("x", x), ("y", y), ("text-anchor", anchor), ("style", pen.FontSize()))
            .Content(pen.Value(id, DiagramDelta.Text)).Close();
    }
}
