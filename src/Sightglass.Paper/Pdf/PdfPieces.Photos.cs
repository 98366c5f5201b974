using System.Collections.Immutable;
using PdfSharp.Drawing;
using PdfSharp.UniversalAccessibility;
using Sightglass.Paper.Document;
using Sightglass.Paper.Photos;
using Sightglass.Paper.Vectors;
using Words = Sightglass.Basics.Language.Say;

namespace Sightglass.Paper.Pdf;

/// <content>Photographs with what is marked in them.</content>
internal sealed partial class PdfPieces
{
    /// <summary>The most of a page's height that a photograph takes.</summary>
    private const double MostOfPage = 0.34;

    /// <summary>A photograph takes this share of the width, where its words take the rest.</summary>
    private const double Beside = 0.34;

    private IEnumerable<PdfPiece> Photos(PaperBlock.Photos photos, double width)
    {
        int across = large ? 1 : photos.Row.Length;
        double gutter = type.Body * 1.6;
        foreach (PaperPhoto[] row in photos.Row.Chunk(across))
        {
            bool beside = (across == 1 || photos.Beside) && !large;
            double cell = (width - ((across - 1) * gutter)) / across;
            double each = beside ? cell * Beside : cell;
            PlacedPhoto[] placed = [.. row.Select((p, i) => Place(p, i * (cell + gutter), each, beside ? cell - each - gutter : cell, beside, gutter))];
            yield return new PdfPiece(placed.Max(p => p.Height), into => Array.ForEach(placed, p => Paint(p, into))) { Space = type.Body * 1.2 };
        }
    }

    private PlacedPhoto Place(PaperPhoto photo, double left, double each, double words, bool beside, double gutter)
    {
        double high = Math.Min(each * photo.File.Height / photo.File.Width, pages.Frame.Height * MostOfPage);
        XSize size = new(high * photo.File.Width / photo.File.Height, high);
        XImage? pixels = PixelsOf(photo.File);
        bool printed = photo.File.Sort == PhotoSort.Svg || pixels is not null;
        PaperText caption = printed ? photo.Caption : photo.Caption.And(" " + Words.It("This picture cannot be printed: save it as JPEG or PNG."));
        var lines = PdfLines.Break(caption, PaperFace.Serif400, type.Small, words);
        double text = lines.Length * type.Small * 1.25;
        return new(photo, pixels, left, size, lines, beside ? size.Width + gutter : 0, beside ? 0 : high + (type.Gap * 0.6), beside ? Math.Max(high, text) : high + (type.Gap * 0.6) + text);
    }

    /// <summary>Null for a drawing, and for what the library cannot read.</summary>
    private static XImage? PixelsOf(PhotoFile file)
    {
        if (file.Sort is not (PhotoSort.Jpeg or PhotoSort.Png))
        {
            return null;
        }

        try
        {
            return XImage.FromStream(new MemoryStream(file.Bytes));
        }
        catch (Exception e) when (e is InvalidOperationException or ArgumentException or NotSupportedException or IOException or IndexOutOfRangeException)
        {
            return null;
        }
    }

    private void Paint(PlacedPhoto placed, XRect into)
    {
        XRect box = new(into.X + placed.Left, into.Y, placed.Size.Width, placed.Size.Height);
        pages.Tags.Figure(placed.Photo.Alt, box, () =>
        {
            if (placed.Photo.File.Svg is { } svg)
            {
                SvgPainter.Paint(pages.Page, svg, box);
            }
            else if (placed.Pixels is { } pixels)
            {
                pages.Page.DrawImage(pixels, box);
            }
        });
        pages.Tags.Artifact(() =>
        {
            pages.Page.DrawRectangle(new XPen(XColors.Black, Rule), box);
            foreach (PhotoMark mark in placed.Photo.Marks)
            {
                Frame(mark, box);
            }
        });
        pages.Tags.ArtifactWords(() => Array.ForEach([.. placed.Photo.Marks], m => Number(m, box)));
        double size = type.Small;
        pages.Tags.Words(PdfBlockLevelElementTag.Paragraph, () => Say(placed.Words, box.X + placed.WordsAt, into.Y + placed.WordsBelow + (size * 0.98), size, size * 1.25));
    }

    /// <summary>White and black, to be seen on any ground.</summary>
    private void Frame(PhotoMark mark, XRect photo)
    {
        XRect box = BoxOf(mark, photo);
        pages.Page.DrawRectangle(new XPen(XColors.White, 2.2), box);
        pages.Page.DrawRectangle(new XPen(XColors.Black, 1), box);
        pages.Page.DrawRectangle(XBrushes.Black, TagOf(mark, photo));
    }

    private void Number(PhotoMark mark, XRect photo)
    {
        XRect tag = TagOf(mark, photo);
        string number = Papers.PaperWords.Number(mark.Number);
        Say(number, tag.X + ((tag.Width - PdfFonts.Width(number, PaperFace.Sans600, type.Small)) / 2), tag.Y + (type.Small * 0.92), PaperFace.Sans600, type.Small, XBrushes.White);
    }

    private static XRect BoxOf(PhotoMark mark, XRect photo) => new(photo.X + (mark.X * photo.Width), photo.Y + (mark.Y * photo.Height), mark.Width * photo.Width, mark.Height * photo.Height);

    /// <summary>At the upper left corner of the mark.</summary>
    private XRect TagOf(PhotoMark mark, XRect photo)
    {
        XRect box = BoxOf(mark, photo);
        return new(box.X, box.Y, PdfFonts.Width(Papers.PaperWords.Number(mark.Number), PaperFace.Sans600, type.Small) + (type.Small * 0.6), type.Small * 1.15);
    }

    /// <param name="Left">From the left edge of the row.</param>
    /// <param name="WordsAt">From the picture's left edge.</param>
    /// <param name="WordsBelow">From the picture's upper edge.</param>
    private sealed record PlacedPhoto(PaperPhoto Photo, XImage? Pixels, double Left, XSize Size, ImmutableArray<ImmutableArray<PdfSegment>> Words, double WordsAt, double WordsBelow, double Height);
}
