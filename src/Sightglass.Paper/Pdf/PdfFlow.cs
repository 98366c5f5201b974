using PdfSharp.Drawing;

namespace Sightglass.Paper.Pdf;

/// <summary>Lays pieces one after the other through the frames.</summary>
internal static class PdfFlow
{
    public static void Lay(PdfPages pages, IReadOnlyList<PdfPiece> pieces)
    {
        IReadOnlySet<int> starts = PdfBreaks.Of(pieces, pages.Frame.Height);
        double y = pages.Frame.Top;
        bool first = true;
        for (int i = 0; i < pieces.Count; i++)
        {
            PdfPiece piece = pieces[i];
            if (starts.Contains(i))
            {
                pages.Next();
                (y, first) = (pages.Frame.Top, true);
                if (piece.Repeated is { } again)
                {
                    again.Paint(new XRect(pages.Frame.X, y, pages.Frame.Width, again.Height));
                    y += again.Height;
                }
            }

            y += first ? 0 : piece.Space;
            piece.Paint(new XRect(pages.Frame.X, y, pages.Frame.Width, piece.Height));
            y += piece.Height;
            first &= piece.Height == 0;
        }
    }

    /// <summary>All of them without a break.</summary>
    public static double Height(IReadOnlyList<PdfPiece> pieces) => pieces.Select((p, i) => p.Height + (i == 0 ? 0 : p.Space)).Sum();

    /// <summary>Paints them one under the other.</summary>
    public static void Stack(IReadOnlyList<PdfPiece> pieces, XRect into)
    {
        double y = into.Y;
        for (int i = 0; i < pieces.Count; i++)
        {
            y += i == 0 ? 0 : pieces[i].Space;
            pieces[i].Paint(new XRect(into.X, y, into.Width, pieces[i].Height));
            y += pieces[i].Height;
        }
    }
}
