using System.Globalization;
using System.Xml.Linq;
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

        if (text.StartsWith("rgb(", StringComparison.Ordinal) && text[4..].TrimEnd(')').Split(',') is { Length: 3 } parts && parts.All(p => byte.TryParse(p, NumberStyles.AllowLeadingWhite, CultureInfo.InvariantCulture, out _)))
        {
            text = "#" + string.Concat(parts.Select(p => byte.Parse(p, NumberStyles.AllowLeadingWhite, CultureInfo.InvariantCulture).ToString("X2", CultureInfo.InvariantCulture)));
        }

        text = text == "white" ? "#FFFFFF" : text;
        return text.Length == 7 && text[0] == '#' && int.TryParse(text.AsSpan(1), NumberStyles.HexNumber, CultureInfo.InvariantCulture, out int rgb)
            ? XColor.FromArgb((int)Math.Round(255 * Math.Clamp(opacity, 0, 1)), (rgb >> 16) & 255, (rgb >> 8) & 255, rgb & 255)
            : null;
    }

    /// <summary>The middle colour of a gradient: on paper its shape is told by its outline.</summary>
    public static XColor? Middle(XElement gradient, double opacity)
    {
        XColor[] stops = [.. gradient.Elements().Select(s => Colour((string?)s.Attribute("stop-color") ?? "", opacity)).OfType<XColor>()];
        return stops.Length == 0 ? null : XColor.FromArgb((int)stops.Average(c => 255 * c.A), (int)stops.Average(c => c.R), (int)stops.Average(c => c.G), (int)stops.Average(c => c.B));
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
