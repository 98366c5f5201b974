using QRCoder;
using Sightglass.Basics.Language;
using Sightglass.Drawing.Svg;

namespace Sightglass.Paper.Vectors;

/// <summary>An address as a square code that a phone reads, drawn in squares: the only place that makes such codes, for paper, pages and the terminal.</summary>
public static class QrDrawing
{
    /// <summary>Empty modules on all sides that readers want (ISO/IEC 18004, from memory).</summary>
    public const int Quiet = 4;

    /// <summary>Rows of modules, the quiet ones left out; true is dark.</summary>
    public static bool[][] Modules(string address)
    {
        using QRCodeData data = QRCodeGenerator.GenerateQrCode(address, QRCodeGenerator.ECCLevel.M, forceUtf8: true);
        int size = data.ModuleMatrix.Count;
        return [.. Enumerable.Range(Quiet, size - (2 * Quiet)).Select(y => Enumerable.Range(Quiet, size - (2 * Quiet)).Select(x => data.ModuleMatrix[y][x]).ToArray())];
    }

    /// <summary>An SVG element, black on white whatever the page's colours are: cameras want it so.</summary>
    public static string Render(string address)
    {
        bool[][] rows = Modules(address);
        int size = rows.Length + (2 * Quiet);
        SvgWriter w = new();
        w.Open("svg", ("viewBox", $"0 0 {size} {size}"), ("class", "qr"), ("role", "img"), ("aria-label", Say.With($"Code for a phone: {address}")), ("shape-rendering", "crispEdges"));
        w.Element("rect", ("x", 0), ("y", 0), ("width", size), ("height", size), ("fill", "#fff"));
        foreach ((int x, int y, int width) in Runs(rows))
        {
            w.Element("rect", ("x", x), ("y", y), ("width", width), ("height", 1), ("fill", "#000"));
        }

        return w.Close().ToString();
    }

    /// <summary>Dark stretches of the rows, quiet modules included: X, Y and width in modules.</summary>
    public static IEnumerable<(int X, int Y, int Width)> Runs(bool[][] rows)
    {
        for (int y = 0; y < rows.Length; y++)
        {
            for (int x = 0; x < rows[y].Length; x++)
            {
                int from = x;
                while (x < rows[y].Length && rows[y][x])
                {
                    x++;
                }

                if (x > from)
                {
                    yield return (from + Quiet, y + Quiet, x - from);
                }
            }
        }
    }
}
