using System.Collections;
using System.Globalization;
using System.Text;
using QRCoder;

namespace Sightglass.Web.Share;

/// <summary>A QR code as a drawing for a page, and as text for a terminal; four light modules round it (ISO/IEC 18004).</summary>
public static class QrPicture
{
    /// <summary>An SVG element, black on white whatever the page's colours are: cameras want it so.</summary>
    public static string Svg(string text)
    {
        List<BitArray> modules = Modules(text);
        StringBuilder path = new();
        for (int y = 0; y < modules.Count; y++)
        {
            for (int x = 0; x < modules.Count; x++)
            {
                if (modules[y][x])
                {
                    path.Append(CultureInfo.InvariantCulture, $"M{x} {y}h1v1h-1z");
                }
            }
        }

        return $"<svg viewBox=\"0 0 {modules.Count} {modules.Count}\" class=\"qr\" role=\"img\" aria-label=\"QR code of the address\" shape-rendering=\"crispEdges\"><rect width=\"100%\" height=\"100%\" fill=\"#fff\"/><path d=\"{path}\" fill=\"#000\"/></svg>";
    }

    /// <summary>Lines for a terminal that knows colours: two rows of modules a line.</summary>
    public static string Text(string text)
    {
        List<BitArray> modules = Modules(text);
        StringBuilder lines = new();
        for (int y = 0; y < modules.Count; y += 2)
        {
            lines.Append("\u001b[30;47m");
            for (int x = 0; x < modules.Count; x++)
            {
                bool upper = modules[y][x], lower = y + 1 < modules.Count && modules[y + 1][x];
                lines.Append(upper ? lower ? '█' : '▀' : lower ? '▄' : ' ');
            }

            lines.Append("\u001b[0m\n");
        }

        return lines.ToString();
    }

    private static List<BitArray> Modules(string text)
    {
        using QRCodeGenerator generator = new();
        using QRCodeData code = generator.CreateQrCode(text, QRCodeGenerator.ECCLevel.M);
        return code.ModuleMatrix;
    }
}
