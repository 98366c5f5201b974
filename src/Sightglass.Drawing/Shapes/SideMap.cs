using Sightglass.Book.Model;

namespace Sightglass.Drawing.Shapes;

/// <summary>Where one side stands on the sheet: from metres along the side and above rail to pixels.</summary>
/// <param name="Side">The side drawn.</param>
/// <param name="Offset">Pixel of the side's coordinate 0.</param>
/// <param name="Ground">Pixel of the rail's top.</param>
/// <param name="Scale">Pixels a metre.</param>
/// <param name="Mirrored">Whether the side's coordinate grows to the left.</param>
public readonly record struct SideMap(Side Side, double Offset, double Ground, double Scale, bool Mirrored)
{
    /// <summary>Pixel of a metre along the side: x of the class on right and left, y on the ends.</summary>
    public double X(double along) => Offset + (Mirrored ? -along : along) * Scale;

    public double Y(double z) => Ground - (z * Scale);

    /// <summary>The metre along the side at a pixel.</summary>
    public double Along(double x) => (x - Offset) / (Mirrored ? -Scale : Scale);
}
