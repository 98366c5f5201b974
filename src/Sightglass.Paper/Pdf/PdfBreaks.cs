namespace Sightglass.Paper.Pdf;

/// <summary>Where pages begin: each as full as what must stay together allows, and none at an end with a line or two alone.</summary>
internal static class PdfBreaks
{
    /// <summary>The last page before an end holds so much of a page's height at least, where what is before it can spare it.</summary>
    public const double Least = 0.15;

    /// <summary>The pieces that begin a page; the first is not among them.</summary>
    /// <param name="pieces">In order.</param>
    /// <param name="room">Height of a page, pt.</param>
    public static IReadOnlySet<int> Of(IReadOnlyList<PdfPiece> pieces, double room)
    {
        List<int> starts = [];
        double y = 0;
        bool first = true;
        for (int i = 0; i < pieces.Count; i++)
        {
            PdfPiece piece = pieces[i];
            // What must stay together is weighed where it begins.
            double together = i > 0 && pieces[i - 1].WithNext ? piece.Height : Together(pieces, i, room);
            if (!first && (piece.NewPage || y + piece.Space + together > room + 0.01))
            {
                starts.Add(i);
                (y, first) = (piece.Repeated?.Height ?? 0, true);
            }

            y += (first ? 0 : piece.Space) + piece.Height;
            first &= piece.Height == 0;
        }

        return Filled(pieces, starts, room);
    }

    /// <summary>Of a page that ends what flows, and is nearly empty, the beginning moves up to the page before.</summary>
    private static SortedSet<int> Filled(IReadOnlyList<PdfPiece> pieces, List<int> starts, double room)
    {
        for (int k = 0; k < starts.Count; k++)
        {
            int start = starts[k], end = k + 1 < starts.Count ? starts[k + 1] : pieces.Count, before = k == 0 ? 0 : starts[k - 1];
            bool ends = end == pieces.Count || pieces[end].NewPage;
            if (!ends || pieces[start].NewPage || Height(pieces, start, end) >= room * Least)
            {
                continue;
            }

            for (int at = start - 1; at > before; at--)
            {
                double height = Height(pieces, at, end);
                if (height > room || Height(pieces, before, at) < room * Least)
                {
                    break;
                }

                if (MayBegin(pieces, at) && height >= room * Least)
                {
                    starts[k] = at;
                    break;
                }
            }
        }

        return [.. starts];
    }

    /// <summary>The height of a piece with those that must stay on its page; of more than a page holds, as many as it holds.</summary>
    private static double Together(IReadOnlyList<PdfPiece> pieces, int from, double room)
    {
        double height = pieces[from].Height;
        for (int i = from; i + 1 < pieces.Count && pieces[i].WithNext && !pieces[i + 1].NewPage; i++)
        {
            double more = height + pieces[i + 1].Space + pieces[i + 1].Height;
            if (more > room)
            {
                break;
            }

            height = more;
        }

        return height;
    }

    private static bool MayBegin(IReadOnlyList<PdfPiece> pieces, int at) => !pieces[at - 1].WithNext && (pieces[at].Height > 0 || pieces[at].WithNext);

    /// <summary>On a page of their own.</summary>
    private static double Height(IReadOnlyList<PdfPiece> pieces, int from, int to)
    {
        double height = pieces[from].Repeated?.Height ?? 0;
        bool first = true;
        for (int i = from; i < to; i++)
        {
            height += (first ? 0 : pieces[i].Space) + pieces[i].Height;
            first &= pieces[i].Height == 0;
        }

        return height;
    }
}
