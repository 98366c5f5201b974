using Sightglass.Book.Model;
using Sightglass.Drawing.Diagram;
using Sightglass.Drawing.Svg;

namespace Sightglass.Drawing.Ladder;

/// <summary>Draws a circuit as rungs between two rails.</summary>
public static class LadderDrawing
{
    /// <summary>The circuits of a system of a book, standing still.</summary>
    public static string Render(ClassBook book, string? system, LadderOptions? options = null, SvgOptions? svg = null)
    {
        options ??= new();
        return Render(LadderLayout.Of(LadderInput.Of(book, system), options), LadderState.Still with { ShowTruth = false }, options, svg);
    }

    /// <summary>A layout in a state.</summary>
    public static string Render(LadderLayout layout, LadderState state, LadderOptions? options = null, SvgOptions? svg = null)
    {
        ArgumentNullException.ThrowIfNull(layout);
        svg ??= SvgOptions.Inline;
        options ??= new();
        SvgWriter w = SvgDocument.Begin(svg, "diagram ladder", layout.Sheet.Left, layout.Sheet.Low, layout.Sheet.Width, layout.Sheet.Height, layout.Input.Title, options.Interactive);
        LadderPen pen = new(w, layout, DiagramValues.Of(layout, state, svg.IdPrefix), options, svg.IdPrefix);
        foreach (LadderBar bar in layout.Bars)
        {
            pen.Bar(bar);
        }

        foreach (LadderRung rung in layout.Rungs)
        {
            pen.Rung(rung);
        }

        foreach ((double x, double y) in layout.Dots)
        {
            w.Element("circle", ("class", "joint joint-power"), ("cx", x), ("cy", y), ("r", 3));
        }

        return SvgDocument.End(w);
    }
}
