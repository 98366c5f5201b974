using PdfSharp.Drawing;
using PdfSharp.Pdf;
using PdfSharp.UniversalAccessibility;

namespace Sightglass.Paper.Pdf;

/// <summary>
/// What is painted, marked with what it is. Marks and text objects must nest: an element of words holds nothing but words, and whatever else is
/// painted is an artifact or a figure of its own.
/// </summary>
internal sealed class PdfTags(UAManager manager)
{
    private readonly StructureBuilder _builder = manager.StructureBuilder;
    private PdfPage? _marked;

    /// <summary>An element of words: a paragraph, a heading, a label.</summary>
    public void Words(PdfBlockLevelElementTag tag, Action paint)
    {
        Begin(tag);
        More(paint);
        End();
    }

    public void Begin(PdfBlockLevelElementTag tag)
    {
        Leave();
        _builder.BeginElement(tag);
    }

    public void Begin(PdfGroupingElementTag tag)
    {
        Leave();
        _builder.BeginElement(tag);
    }

    public void End() => _builder.End();

    /// <summary>Words of an element that is open over several pages.</summary>
    public void More(Action paint)
    {
        manager.BeginTextMode();
        paint();
        _marked = manager.CurrentPage;
    }

    /// <summary>The head of a row or of a column.</summary>
    public void Head(bool column, Action paint)
    {
        Begin(PdfBlockLevelElementTag.TableHeaderCell);
        PdfDictionary scope = new();
        scope.Elements.SetName("/O", "/Table");
        scope.Elements.SetName("/Scope", column ? "/Column" : "/Row");
        _builder.CurrentStructureElement.Elements["/A"] = scope;
        More(paint);
        End();
    }

    /// <summary>A drawing, with what it shows.</summary>
    public void Figure(string alt, XRect box, Action paint)
    {
        OpenPage();
        Leave();
        _builder.BeginElement(PdfIllustrationElementTag.Figure, alt, box);
        // Its ground first: the mark is written with the first thing that is painted, and must not begin among words.
        manager.CurrentGraphics.DrawRectangle(XBrushes.White, box);
        paint();
        Leave();
        End();
    }

    /// <summary>Rules, frames, numbers of pages: nothing that is read.</summary>
    public void Artifact(Action paint)
    {
        Leave();
        _builder.BeginArtifact();
        paint();
        Leave();
        End();
    }

    /// <summary>Words of the page's furniture: not read.</summary>
    public void ArtifactWords(Action paint)
    {
        manager.BeginTextMode();
        _builder.BeginArtifact();
        paint();
        End();
    }

    /// <summary>The library writes the first mark of a page among words, whatever it is of: before a drawing it gets a space that nobody reads.</summary>
    private void OpenPage()
    {
        if (_marked != manager.CurrentPage)
        {
            Leave();
            _builder.BeginElement(PdfGroupingElementTag.NonstructuralElement);
            Words(PdfBlockLevelElementTag.Paragraph, () => manager.CurrentGraphics.DrawString(" ", PdfFonts.Font(PaperFace.Sans400, 18), XBrushes.Black, 36, 36));
            End();
        }
    }

    /// <summary>Ends an open text object.</summary>
    private void Leave()
    {
        if (manager.CurrentGraphics is not null)
        {
            manager.BeginGraphicMode();
        }
    }
}
