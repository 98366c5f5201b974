using Sightglass.Drawing.Svg;

namespace Sightglass.Drawing.Diagram;

/// <summary>Draws the symbols on pipes. Each is drawn for flow to the right and turned; valves are drawn upright.</summary>
internal static class DiagramSymbols
{
    private const string Bow = "M-13-11V11L13-11V11Z";

    public static void Draw(DiagramPen pen, DiagramPart part)
    {
        SvgWriter w = pen.Writer;
        string turn = part.Turn == 0 ? "" : $" rotate({part.Turn})";
        pen.Group(part.Node, ("transform", $"translate({SvgNumber.Format(part.X)} {SvgNumber.Format(part.Y)}){turn}"));
        w.Title(part.Node.Label);
        w.Element("circle", ("class", "tgt"), ("r", Math.Max(part.Half.Along, 16) + 6));
        Shape(w, part);
        w.Close().Break();
    }

    private static void Shape(SvgWriter w, DiagramPart part)
    {
        switch (part.Node.Symbol)
        {
            case DiagramSymbol.Valve:
                w.Element("path", ("class", "bow"), ("d", Bow));
                Handle(w, part.Turn);
                break;
            case DiagramSymbol.CutOff:
                w.Element("path", ("class", "bow"), ("d", Bow));
                Solenoid(w, part.Turn);
                break;
            case DiagramSymbol.Check:
                w.Element("path", ("class", "bow one"), ("d", "M-13-11V11L11 0Z")).Element("path", ("class", "d-line bar"), ("d", "M12-11V11"));
                break;
            case DiagramSymbol.Pump:
                w.Element("circle", ("class", "d-out"), ("r", 22)).Element("path", ("class", "d-ink"), ("d", "M22 0L-8-18V18z"));
                break;
            case DiagramSymbol.Compressor:
                w.Element("circle", ("class", "d-out"), ("r", 22)).Element("path", ("class", "d-part"), ("d", "M21 0L-8-18V18z"));
                break;
            case DiagramSymbol.Regulator:
                Square(w).Element("path", ("class", "d-det"), ("d", "M-4-16l8-4-8-4 8-4"));
                break;
            case DiagramSymbol.Relay:
                Square(w).Element("path", ("class", "d-line dash"), ("d", "M0-16V-28"));
                break;
            case DiagramSymbol.Relief:
                Square(w).Element("path", ("class", "d-det"), ("d", "M-4-16l8-4-8-4 8-4")).Element("path", ("class", "d-det"), ("d", "M-16 10L-10 16"));
                break;
            case DiagramSymbol.Vent:
                Square(w).Element("path", ("class", "d-ink"), ("d", "M-5 16H5L0 24z"));
                break;
            case DiagramSymbol.ControlValve:
                w.Element("rect", ("class", "d-part"), ("x", -26), ("y", -13), ("width", 52), ("height", 26)).Element("path", ("class", "d-line"), ("d", "M0-13V13"))
                    .Element("path", ("class", "d-det"), ("d", "M-22 0H-6M-11-4l5 4-5 4M22 6H10V-6M6-6H14"));
                break;
            case DiagramSymbol.Filter:
                w.Element("path", ("class", "d-out"), ("d", "M-22 0L0-22 22 0 0 22z")).Element("path", ("class", "d-line dash"), ("d", "M0-22V22"));
                break;
            case DiagramSymbol.Orifice:
                w.Element("path", ("class", "d-line"), ("d", "M-9-10Q0-3 9-10M-9 10Q0 3 9 10"));
                break;
            case DiagramSymbol.Coupling:
                w.Element("path", ("class", "d-line"), ("d", "M-7-9Q0-9 0 0T-7 9M7-9Q0-9 0 0T7 9"));
                break;
            case DiagramSymbol.Pipe:
                w.Element("rect", ("class", "d-part"), ("x", -26), ("y", -6), ("width", 52), ("height", 12), ("rx", 6)).Element("path", ("class", "d-det"), ("d", "M-20 0H20"));
                break;
            case DiagramSymbol.Breaker:
                Arm(w).Element("path", ("class", "d-line"), ("d", "M11-5L21 5M11 5L21-5"));
                break;
            case DiagramSymbol.Contact:
                Arm(w).Element("path", ("class", "d-line"), ("d", "M16-6A6 6 0 0 1 16 6"));
                break;
            case DiagramSymbol.Source:
                w.Element("circle", ("class", "d-out"), ("r", 22)).Element("path", ("class", "d-line"), ("d", "M-12 0Q-6-13 0 0T12 0"));
                break;
            case DiagramSymbol.Load:
                w.Element("rect", ("class", "d-part"), ("x", -20), ("y", -13), ("width", 40), ("height", 26)).Element("path", ("class", "d-line"), ("d", "M-13 0H11M4-6l7 6-7 6"));
                break;
            case DiagramSymbol.Fill:
                w.Element("path", ("class", "bow"), ("d", "M-9-9V9L7 4V-4Z"));
                break;
            case DiagramSymbol.Drain:
                w.Element("path", ("class", "bow"), ("d", "M-9-7V7L9-7V7Z"));
                break;
            default:
                w.Element("rect", ("class", "d-part"), ("x", -18), ("y", -12), ("width", 36), ("height", 24));
                break;
        }
    }

    // A gap in the line with an arm over it: in line while current can pass; the sheet lifts it while none can.
    private static SvgWriter Arm(SvgWriter w) =>
        w.Element("path", ("class", "gap"), ("d", "M-16 0H16")).Open("g", ("transform", "translate(-16 0)")).Element("path", ("class", "arm"), ("d", "M0 0H32")).Close()
            .Element("circle", ("class", "d-ink"), ("cx", -16), ("cy", 0), ("r", 3)).Element("circle", ("class", "d-ink"), ("cx", 16), ("cy", 0), ("r", 3));

    // A valve that pressures steer: a square with the way through it.
    private static SvgWriter Square(SvgWriter w) =>
        w.Element("rect", ("class", "d-part"), ("x", -16), ("y", -16), ("width", 32), ("height", 32)).Element("path", ("class", "d-det"), ("d", "M-12 0H11M5-5l7 5-7 5"));

    // In line with the pipe when open; the sheet turns it across when closed: to the right on an upright pipe, up on a level one.
    private static void Handle(SvgWriter w, int turn)
    {
        int way = turn == 90 ? -1 : 1;
        string style = turn switch { 90 => "handle down", 270 => "handle up", _ => "handle" };
        w.Open("g", ("class", style)).Element("path", ("class", "handle-bar"), ("d", way > 0 ? "M0 0H25" : "M0 0H-25"))
            .Element("circle", ("class", "d-ink"), ("cx", way * 26), ("cy", 0), ("r", 4.2)).Close();
    }

    // The magnet that holds it open: always below, or to the right on an upright pipe.
    private static void Solenoid(SvgWriter w, int turn)
    {
        string back = turn == 0 ? "" : $"rotate({-turn})";
        bool upright = turn % 180 != 0;
        w.Open("g", ("transform", back.Length > 0 ? back + (upright ? " rotate(-90)" : "") : null))
            .Element("path", ("class", "m m-control"), ("d", "M0 9V14")).Element("rect", ("class", "d-part"), ("x", -11), ("y", 14), ("width", 22), ("height", 14))
            .Element("path", ("class", "d-line"), ("d", "M-11 28L11 14")).Close();
    }
}
