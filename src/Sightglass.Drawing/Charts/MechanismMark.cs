using Sightglass.Drawing.Svg;

namespace Sightglass.Drawing.Charts;

/// <summary>Marks of failures by mechanism: cross, triangle, square, ring, diamond, plus; then the same again.</summary>
public static class MechanismMark
{
    private static readonly string[] _signs = ["✕", "▲", "□", "○", "◆", "+"];

    /// <summary>The mark as a character, for text.</summary>
    public static string Sign(int mechanism) => _signs[mechanism % _signs.Length];

    /// <summary>Draws a mark, 8 px wide.</summary>
    public static void Draw(SvgWriter w, int mechanism, double x, double y)
    {
        switch (mechanism % _signs.Length)
        {
            case 0:
                w.Path("bad-line", new SvgPath().Segment(x - 4, y - 4, x + 4, y + 4).Segment(x - 4, y + 4, x + 4, y - 4));
                break;
            case 1:
                w.Path("bad", new SvgPath().Polyline([(x, y - 4.5), (x + 4.5, y + 3.5), (x - 4.5, y + 3.5)]).Close());
                break;
            case 2:
                w.Path("bad-line", new SvgPath().Rectangle(x - 4, y - 4, 8, 8));
                break;
            case 3:
                w.Element("circle", ("class", "bad-line"), ("cx", x), ("cy", y), ("r", 4));
                break;
            case 4:
                w.Path("bad", new SvgPath().Polyline([(x, y - 5), (x + 5, y), (x, y + 5), (x - 5, y)]).Close());
                break;
            default:
                w.Path("bad-line", new SvgPath().Segment(x - 5, y, x + 5, y).Segment(x, y - 5, x, y + 5));
                break;
        }
    }
}
