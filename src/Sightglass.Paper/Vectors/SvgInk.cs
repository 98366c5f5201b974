using System.Globalization;
using PdfSharp.Drawing;

namespace Sightglass.Paper.Vectors;

/// <summary>Colours and pens of a style.</summary>
internal static class SvgInk
{
    /// <summary>The colour that is written, or null for none.</summary>
    public static XColor? Colour(string text, double opacity)
    {
        if (text.Length == 4 && text[0] == '#')
        {
            text = $"#{text[1]}{text[1]}{text[2]}{text[2]}{text[3]}{text[3]}";
        }

        if (text is "currentColor" or "black")
        {
            text = "#000000";
        }

        return text.Length == 7 && text[0] == '#' && int.TryParse(text.AsSpan(1), NumberStyles.HexNumber, CultureInfo.InvariantCulture, out int rgb)
            ? XColor.FromArgb((int)Math.Round(255 * Math.Clamp(opacity, 0, 1)), (rgb >> 16) & 255, (rgb >> 8) & 255, rgb & 255)
            : null;
    }

    public static XBrush? Brush(SvgStyle style, double opacity) => Colour(style["fill"], opacity) is { } colour ? new XSolidBrush(colour) : null;

    public static XPen? Pen(SvgStyle style, double opacity)
    {
        double width = style.Length("stroke-width", 1);
        if (width <= 0 || Colour(style["stroke"], opacity) is not { } colour)
        {
            return null;
        }

        XPen pen = new(colour, width)
        {
            LineCap = style["stroke-linecap"] switch { "round" => XLineCap.Round, "square" => XLineCap.Square, _ => XLineCap.Flat },
            LineJoin = style["stroke-linejoin"] == "round" ? XLineJoin.Round : XLineJoin.Miter,
        };
        double[] dashes = [.. style["stroke-dasharray"].Split([' ', ','], StringSplitOptions.RemoveEmptyEntries).Select(t => double.TryParse(t, NumberStyles.Float, CultureInfo.InvariantCulture, out double d) ? d : -1)];
        if (dashes.Length > 0 && dashes.All(d => d >= 0) && dashes.Sum() > 0)
        {
            // Given in widths of the pen; a dot is a dash of next to no length with round ends.
            pen.DashPattern = [.. dashes.Select(d => Math.Max(d, 0.01) / width)];
        }

        return pen;
    }
}
