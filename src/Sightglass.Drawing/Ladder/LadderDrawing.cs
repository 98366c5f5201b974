using Sightglass.Book.Model;
using Sightglass.Drawing.Diagram;
using Sightglass.Drawing.Shapes;
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
        w.Open("g", ("id", svg.IdPrefix + DiagramDrawing.All));
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

        w.Close();
        return SvgDocument.End(w);
    }

    /// <summary>The rows as drawings that show parts of another one of the same page, so that they are as alive as that: what <see cref="Render(LadderLayout, LadderState, LadderOptions?, SvgOptions?)"/> with the same prefix has drawn.</summary>
    public static string RenderRows(LadderLayout layout, string prefix)
    {
        ArgumentNullException.ThrowIfNull(layout);
        SvgWriter w = new();
        foreach (Bounds row in layout.Rows)
        {
            string size = $"{SvgNumber.Format(row.Left)} {SvgNumber.Format(row.Low)} {SvgNumber.Format(row.Width)} {SvgNumber.Format(row.Height)}";
            w.Open("svg", ("class", "diagram piece"), ("viewBox", size)).Element("use", ("href", $"#{prefix}{DiagramDrawing.All}")).Close().Break();
        }

        return w.ToString();
    }
}
