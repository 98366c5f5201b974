namespace Sightglass.Drawing.Diagram;

/// <summary>Sizes of a diagram along lines that go through, in pixels.</summary>
internal static class ThroughMeasure
{
    /// <summary>From a row to what stands in the gap below it, and from that to the next row.</summary>
    public const double Clear = 12;

    /// <summary>Between what stands in two columns.</summary>
    public const double Between = 10;

    /// <summary>A pipe without anything beside it, half.</summary>
    public const double Bare = 9;

    public const double Ring = 11;

    /// <summary>From one gauge to the next in a stack.</summary>
    public const double RingPitch = 38;

    /// <summary>From the wall of a vessel to the first pipe at it.</summary>
    public const double Wall = 22;

    public const double LeastVessel = 118;

    /// <summary>Between two vessels.</summary>
    public const double VesselGap = 18;

    /// <summary>Between two vehicles, for the couplings.</summary>
    public const double VehicleGap = 56;

    /// <summary>Half of what a symbol takes along an upright pipe, its handle included.</summary>
    public static double Half(DiagramNode node) => node.Symbol == DiagramSymbol.Valve ? 31 : DiagramPart.SizeOf(node.Symbol).Along + 8;

    /// <summary>From a level pipe to the words below a symbol on it.</summary>
    public static double Below(DiagramNode node) => node.Symbol == DiagramSymbol.Valve ? 33 : DiagramPart.Below(node.Symbol) + 5;

    /// <summary>From the pipe to the words at its right: a closed handle lies between.</summary>
    public static double WordsAt(DiagramNode node) => node.Symbol == DiagramSymbol.Valve ? 36 : DiagramPart.SizeOf(node.Symbol).Across + 8;
}
