using Sightglass.Drawing.Svg;

namespace Sightglass.Drawing.Ladder;

/// <summary>Symbols of parts on an upright line, after IEC 60617 (from memory); plus is up.</summary>
internal static class LadderSymbols
{
    /// <summary>How far a symbol reaches up and down from its middle.</summary>
    public static double HalfOf(LadderSymbol symbol) => symbol switch
    {
        LadderSymbol.Battery => 9,
        LadderSymbol.Coil => 8,
        LadderSymbol.Diode => 9,
        LadderSymbol.Load or LadderSymbol.Resistance => 15,
        _ => 14,
    };

    public static void Draw(SvgWriter w, LadderSymbol symbol, bool isTurned)
    {
        if (isTurned)
        {
            w.Open("g", ("transform", "rotate(180)"));
        }

        switch (symbol)
        {
            case LadderSymbol.Battery:
                w.Element("path", ("class", "d-line"), ("d", "M-13-9H13M-13 3H13")).Element("path", ("class", "d-line heavy"), ("d", "M-6-3H6M-6 9H6"))
                    .Element("path", ("class", "d-det"), ("d", "M-14-17h6M-11-20v6"));
                break;
            case LadderSymbol.Charger:
                w.Element("circle", ("class", "d-part"), ("r", 14)).Element("path", ("class", "d-line"), ("d", "M5-3A6 6 0 1 0 5 4V1H1"));
                break;
            case LadderSymbol.Motor:
                w.Element("circle", ("class", "d-part lens"), ("r", 14)).Element("path", ("class", "d-line"), ("d", "M-6 6V-6L0 2 6-6V6"));
                break;
            case LadderSymbol.Contact:
                w.Element("circle", ("class", "d-ink"), ("cy", 14), ("r", 2.2)).Element("path", ("class", "blade"), ("d", "M0 14V-14"));
                break;
            case LadderSymbol.Breaker:
                w.Element("circle", ("class", "d-ink"), ("cy", 14), ("r", 2.2)).Element("path", ("class", "blade"), ("d", "M0 14V-14"))
                    .Element("path", ("class", "d-line"), ("d", "M-4-18L4-10M4-18L-4-10"));
                break;
            case LadderSymbol.Coil:
                w.Element("rect", ("class", "d-part lens"), ("x", -15), ("y", -8), ("width", 30), ("height", 16));
                break;
            case LadderSymbol.Lamp:
                w.Element("circle", ("class", "d-part lens"), ("r", 14)).Element("path", ("class", "d-line"), ("d", "M-9.9-9.9L9.9 9.9M9.9-9.9L-9.9 9.9"))
                    .Element("path", ("class", "rays"), ("d", "M-17.5 0H-21.5M-15.5-9L-19-11M-15.5 9L-19 11M15.5-9L19-11M15.5 9L19 11"));
                break;
            case LadderSymbol.Diode:
                w.Element("path", ("class", "d-part"), ("d", "M-10-9H10L0 8Z")).Element("path", ("class", "d-line"), ("d", "M-10 8H10"));
                break;
            case LadderSymbol.Load:
                w.Element("rect", ("class", "d-part lens"), ("x", -11), ("y", -15), ("width", 22), ("height", 30), ("rx", 3));
                break;
            default:
                w.Element("rect", ("class", "d-part"), ("x", -6), ("y", -15), ("width", 12), ("height", 30));
                break;
        }

        if (isTurned)
        {
            w.Close();
        }
    }
}
