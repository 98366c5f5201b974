using System.Collections.Immutable;
using PdfSharp.Drawing;
using PdfSharp.Pdf;
using PdfSharp.UniversalAccessibility;
using Sightglass.Basics.Language;
using Sightglass.Paper.Document;

namespace Sightglass.Paper.Pdf;

/// <summary>The pages of a PDF with their furniture, and the frames on them that text flows through.</summary>
internal sealed class PdfPages
{
    private readonly PaperDocument _paper;
    private readonly PaperSheet _sheet;
    private readonly PdfRoom _room;
    private readonly int _count;
    private int _panel;

    /// <param name="count">How many pages there will be, for their numbers; 0 where that is being found out.</param>
    public PdfPages(PaperDocument paper, PaperSheet sheet, int count)
    {
        (_paper, _sheet, _count) = (paper, sheet, count);
        _room = PdfRoom.Of(sheet, paper.Look, paper.Notice);
        Document = new PdfDocument();
        UAManager manager = UAManager.ForDocument(Document);
        manager.SetDocumentLanguage(paper.Language);
        Tags = new PdfTags(manager);
        _panel = sheet.Panels;
        Next();
    }

    public PdfDocument Document { get; }

    public PdfTags Tags { get; }

    public PdfType Type => _room.Type;

    private double FurnitureSize => _room.Furniture;

    /// <summary>The least size of words on the drawings, pt; infinite where there is none.</summary>
    public double LeastLetters { get; private set; } = double.PositiveInfinity;

    /// <summary>The page that is painted on.</summary>
    public XGraphics Page { get; private set; } = null!;

    /// <summary>Where text flows.</summary>
    public XRect Frame { get; private set; }

    /// <summary>The next frame: on this page, or on a new one.</summary>
    public void Next()
    {
        if (_panel < _sheet.Panels - 1)
        {
            _panel++;
        }
        else
        {
            _panel = 0;
            PdfPage page = Document.AddPage();
            page.Width = XUnit.FromMillimeter(_sheet.Width);
            page.Height = XUnit.FromMillimeter(_sheet.Height);
            Page = XGraphics.FromPdfPage(page);
            Tags.Artifact(Rules);
            Tags.ArtifactWords(Words);
        }

        double panel = PdfRoom.Mm(_sheet.Width) / _sheet.Panels;
        double margin = PdfRoom.Mm(_sheet.Margin);
        Frame = new XRect((_panel * panel) + margin, margin + _room.Head, _room.Width, _room.Height);
    }

    /// <summary>A line of the list of contents that a reader shows beside the pages.</summary>
    public void Outline(string words, int level, double y)
    {
        PdfOutlineCollection under = level > 1 && Document.Outlines.Count > 0 ? Document.Outlines[^1].Outlines : Document.Outlines;
        under.Add(new PdfOutline(words, Document.Pages[^1], opened: true) { Top = PdfRoom.Mm(_sheet.Height) - y });
    }

    /// <summary>A drawing's words come out at so many pt.</summary>
    public void Drawn(double letters) => LeastLetters = Math.Min(LeastLetters, letters);

    private double Left => PdfRoom.Mm(_sheet.Margin);

    private double Right => PdfRoom.Mm(_sheet.Width - _sheet.Margin);

    private double Bottom => PdfRoom.Mm(_sheet.Height - _sheet.Margin);

    private double HeadRule => PdfRoom.Mm(_sheet.Margin) + (FurnitureSize * 1.6);

    private void Rules()
    {
        if (_paper.Look == PaperLook.Pocket)
        {
            Page.DrawLine(new XPen(XColors.Black, 0.4), Left, Bottom - (FurnitureSize * 1.35), Right, Bottom - (FurnitureSize * 1.35));
            Folds();
            return;
        }

        Page.DrawLine(new XPen(XColors.Black, 1.2), Left, HeadRule, Right, HeadRule);
        Page.DrawLine(new XPen(XColors.Black, 0.4), Left, HeadRule + 2.6, Right, HeadRule + 2.6);
    }

    private void Words()
    {
        string number = _count < 2 ? "" : Say.With($"{Document.PageCount} of {_count}");
        if (_paper.Look == PaperLook.Pocket)
        {
            Put(_paper.Machine, Left, Bottom, PaperFace.Sans400, FurnitureSize);
            Put(number, Right, Bottom, PaperFace.Sans600, FurnitureSize, fromRight: true);
            return;
        }

        Put("Sightglass", Left, HeadRule - (FurnitureSize * 0.55), PaperFace.Serif400, FurnitureSize * 1.35);
        Put(_paper.Machine, Right, HeadRule - (FurnitureSize * 0.55), PaperFace.Sans400, FurnitureSize, fromRight: true);
        double top = Bottom - _room.Foot + 8 + FurnitureSize;
        for (int i = 0; i < _room.Notice.Length; i++)
        {
            foreach (PdfSegment segment in _room.Notice[i])
            {
                Put(segment.Text, Left + segment.X, top + (i * FurnitureSize * 1.25), segment.Face, FurnitureSize);
            }
        }

        string day = _paper.Printed is { } printed ? Papers.PaperWords.Day(printed) : "";
        Put(string.Join("   ", new[] { day, number }.Where(t => t.Length > 0)), Right, top, PaperFace.Sans600, FurnitureSize, fromRight: true);
    }

    /// <summary>Short marks at the edges where a sheet is folded.</summary>
    private void Folds()
    {
        XPen pen = new(XColors.Black, 0.5) { DashPattern = [4, 3] };
        double height = PdfRoom.Mm(_sheet.Height);
        for (int i = 1; i < _sheet.Panels; i++)
        {
            double x = PdfRoom.Mm(_sheet.Width) * i / _sheet.Panels;
            Page.DrawLine(pen, x, 6, x, PdfRoom.Mm(_sheet.Margin));
            Page.DrawLine(pen, x, height - PdfRoom.Mm(_sheet.Margin), x, height - 6);
        }
    }

    private void Put(string text, double x, double y, PaperFace face, double size, bool fromRight = false)
    {
        if (text.Length > 0)
        {
            Page.DrawString(PdfFonts.Drawn(text), PdfFonts.Font(face, size), XBrushes.Black, x - (fromRight ? PdfFonts.Width(text, face, size) : 0), y);
        }
    }
}
