using Sightglass.Drawing.Look;

namespace Sightglass.Drawing.Svg;

/// <summary>Opens and closes the <c>svg</c> element itself, with the style where the drawing stands alone.</summary>
internal static class SvgDocument
{
    /// <summary>Opens the element; size and view box in pixels.</summary>
    public static SvgWriter Begin(SvgOptions options, string style, double x, double y, double width, double height, string label, bool interactive = false)
    {
        bool alone = options.Embedding != Embedding.None;
        SvgWriter writer = new();
        writer.Open(
            "svg",
            ("xmlns", alone ? "http://www.w3.org/2000/svg" : null),
            ("class", style),
            ("viewBox", $"{SvgNumber.Format(x)} {SvgNumber.Format(y)} {SvgNumber.Format(width)} {SvgNumber.Format(height)}"),
            ("width", alone ? SvgNumber.Format(width) : null),
            ("height", alone ? SvgNumber.Format(height) : null),
            ("data-theme", alone && options.Theme != Theme.Reader ? options.Theme.ToString().ToLowerInvariant() : null),
            ("role", interactive ? "group" : "img"),
            ("aria-label", label));
        if (alone)
        {
            writer.Open("style").Content(LookStyle.Css(options.Embedding == Embedding.StyleAndFonts)).Close();
            if (options.Paper)
            {
                writer.Element("rect", ("class", "paper"), ("x", x), ("y", y), ("width", width), ("height", height));
            }
        }

        return writer.Break();
    }

    public static string End(SvgWriter writer) => writer.Close().Break().ToString();
}
