namespace Sightglass.Drawing.Svg;

/// <summary>Lines of media: colour and pattern.</summary>
internal static class MediumLine
{
    /// <summary>Solid heavy fuel, two rails main air, rails with rungs brake air, beads power, dashes control, dots water.</summary>
    public static SvgWriter Draw(SvgWriter writer, string medium, SvgPath path)
    {
        string name = medium is "fuel" or "main" or "brake" or "power" or "control" or "water" ? medium : "plain";
        writer.Path("m m-" + name, path);
        return name is "main" or "brake" or "power" ? writer.Path($"m m-{name}-core", path) : writer;
    }
}
