using Sightglass.Basics.Language;
using Sightglass.Drawing.Svg;

namespace Sightglass.Drawing.Diagram;

/// <summary>Draws what is joined crosswise, as truth.</summary>
internal static class DiagramCrosses
{
    public static void Draw(DiagramPen pen)
    {
        if (!pen.Options.Truth)
        {
            return;
        }

        SvgWriter w = pen.Writer;
        foreach (DiagramCross cross in pen.Layout.Crosses)
        {
            w.Open("g", ("class", "tr cross"), ("id", pen.Id("cr", cross.Id)), ("role", "img"), ("aria-label", Say.With($"{cross.Id} are crossed")));
            foreach (var line in cross.Lines)
            {
                w.Path("truth-line", new SvgPath().Polyline(line));
            }

            foreach ((double x, double y) in cross.Words)
            {
                w.Open("text", ("class", "truthword"), ("x", x), ("y", y), ("text-anchor", "middle"), ("style", pen.FontSize())).Content(ThroughCrossings.Words).Close();
            }

            w.Close().Break();
        }
    }
}
