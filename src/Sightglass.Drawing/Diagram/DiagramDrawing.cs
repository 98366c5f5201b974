using Sightglass.Book.Model;
using Sightglass.Drawing.Svg;

namespace Sightglass.Drawing.Diagram;

/// <summary>Draws a network as a system diagram.</summary>
public static class DiagramDrawing
{
    /// <summary>Id, without a prefix, of all that is drawn: <see cref="DiagramPieces"/> show parts of it.</summary>
    internal const string All = "all";

    /// <summary>The diagram of a system of a book, standing still.</summary>
    public static string Render(ClassBook book, string? system = null, DiagramOptions? options = null, SvgOptions? svg = null)
    {
        options ??= new DiagramOptions();
        return Render(DiagramLayout.Of(DiagramInput.Of(book, system), options), DiagramState.Still, options, svg);
    }

    /// <summary>A layout in a state.</summary>
    public static string Render(DiagramLayout layout, DiagramState state, DiagramOptions? options = null, SvgOptions? svg = null)
    {
        svg ??= SvgOptions.Inline;
        options ??= new DiagramOptions();
        SvgWriter w = SvgDocument.Begin(
            svg, "diagram", layout.Sheet.Left, layout.Sheet.Low, layout.Sheet.Width, layout.Sheet.Height, layout.Input.Title, options.Interactive);
        DiagramPen pen = new(w, layout, DiagramValues.Of(layout, state, svg.IdPrefix), options, svg.IdPrefix);
        Draw(pen);
        return SvgDocument.End(w);
    }

    /// <summary>All that a layout holds, into an element that is open.</summary>
    internal static void Draw(DiagramPen pen)
    {
        SvgWriter w = pen.Writer;
        pen.Definitions();
        w.Open("g", ("id", pen.Prefix + All));
        DiagramPipes.Draw(pen);
        DiagramBodies.Draw(pen);
        foreach (DiagramPart part in pen.Layout.Parts)
        {
            DiagramSymbols.Draw(pen, part);
        }

        DiagramCrosses.Draw(pen);
        DiagramInstruments.Draw(pen);
        DiagramWords.Draw(pen);
        w.Close();
    }
}
