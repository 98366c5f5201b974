using System.Text;
using Sightglass.Paper.Vectors;

namespace Sightglass.Web.Share;

/// <summary>A QR code for a page and for a terminal; empty modules round it.</summary>
public static class QrPicture
{
    /// <summary>An SVG element, black on white.</summary>
    public static string Svg(string text) => QrDrawing.Render(text);

    /// <summary>Lines for a terminal that knows colours: two rows of modules a line.</summary>
    public static string Text(string text)
    {
        bool[][] modules = QrDrawing.Modules(text);
        int size = modules.Length + (2 * QrDrawing.Quiet);
        StringBuilder lines = new();
        for (int y = 0; y < size; y += 2)
        {
            lines.Append("\u001b[30;47m");
            for (int x = 0; x < size; x++)
            {
                bool upper = IsDark(modules, x, y), lower = IsDark(modules, x, y + 1);
                lines.Append(upper ? lower ? '█' : '▀' : lower ? '▄' : ' ');
            }

            lines.Append("\u001b[0m\n");
        }

        return lines.ToString();
    }

    private static bool IsDark(bool[][] modules, int x, int y) =>
        modules.ElementAtOrDefault(y - QrDrawing.Quiet)?.ElementAtOrDefault(x - QrDrawing.Quiet) is true;
}
