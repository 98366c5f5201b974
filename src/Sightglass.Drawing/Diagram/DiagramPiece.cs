using Sightglass.Drawing.Shapes;

namespace Sightglass.Drawing.Diagram;

/// <summary>One of the pieces that a diagram is cut into, with the numbers of those that it goes on in.</summary>
/// <param name="Number">From 1, along the rows.</param>
/// <param name="Box">The part of the sheet that it shows.</param>
public sealed record DiagramPiece(int Number, Bounds Box)
{
    public int? Left { get; init; }

    public int? Right { get; init; }

    public int? Above { get; init; }

    public int? Below { get; init; }

    /// <summary>Whether it is all there is.</summary>
    public bool IsAlone => (Left ?? Right ?? Above ?? Below) is null;
}
