using Sightglass.Drawing.Shapes;

namespace Sightglass.Drawing.Diagram;

/// <summary>A symbol on a pipe.</summary>
/// <param name="X">Middle, pixels.</param>
/// <param name="Y">Middle, pixels, downwards.</param>
/// <param name="Turn">Degrees clockwise from flow to the right: 0, 90, 180 or 270.</param>
public sealed record DiagramPart(DiagramNode Node, double X, double Y, int Turn)
{
    /// <summary>Half the extent along the pipe and across it.</summary>
    public (double Along, double Across) Half => SizeOf(Node.Symbol);

    public Bounds Box => Turn % 180 == 0
        ? new Bounds(X - Half.Along, Y - Half.Across, X + Half.Along, Y + Half.Across)
        : new Bounds(X - Half.Across, Y - Half.Along, X + Half.Across, Y + Half.Along);

    /// <summary>From the middle to the lower edge of a symbol on a pipe that runs to the right: its spring or pilot stands above.</summary>
    public static double Below(DiagramSymbol symbol) => symbol is DiagramSymbol.Relief or DiagramSymbol.Regulator or DiagramSymbol.Relay ? 16 : SizeOf(symbol).Across;

    public static (double Along, double Across) SizeOf(DiagramSymbol symbol) => symbol switch
    {
        DiagramSymbol.Pump or DiagramSymbol.Filter or DiagramSymbol.Compressor or DiagramSymbol.Source => (22, 22),
        DiagramSymbol.Relief or DiagramSymbol.Regulator or DiagramSymbol.Relay or DiagramSymbol.Vent => (16, 29), // with the spring or the pilot that stands out
        DiagramSymbol.ControlValve => (26, 13),
        DiagramSymbol.Valve or DiagramSymbol.Check => (13, 11),
        DiagramSymbol.CutOff => (13, 28),
        DiagramSymbol.Orifice or DiagramSymbol.Coupling => (10, 10),
        DiagramSymbol.Breaker or DiagramSymbol.Contact => (16, 14),
        DiagramSymbol.Load => (20, 13),
        DiagramSymbol.Pipe => (26, 7),
        DiagramSymbol.Fill or DiagramSymbol.Drain => (9, 9),
        _ => (18, 12),
    };
}
