using System.Collections.Immutable;
using Sightglass.Basics.Language;
using Sightglass.Book.Model;
using Sightglass.Drawing.Diagram;
using Sightglass.Paper.Document;
using Sightglass.Paper.Pdf;

namespace Sightglass.Paper.Papers;

/// <summary>
/// The diagram of a system for a sheet: whole where its names can be read, else laid out anew with larger ones or cut into pieces, whichever takes the fewest; on the sheet as it
/// stands or on its long side.
/// </summary>
internal sealed class DiagramPlates
{
    /// <summary>Sizes of labels that are tried, pixels: larger ones beside the same symbols take a wider drawing, and less of it for their size.</summary>
    private static readonly double[] s_labels = [13, 16, 18, 20, 22, 24];

    /// <summary>Names that are larger than this on paper, pt, take room and are read no better.</summary>
    private const double Ample = 9;

    /// <summary>No pixel of a drawing is larger than this on paper, pt.</summary>
    private const double Largest = 1;

    private readonly DiagramLayout _layout;
    private readonly DiagramOptions _options;
    private readonly ImmutableArray<DiagramPiece> _pieces;
    private readonly double _scale;

    private DiagramPlates(DiagramLayout layout, DiagramOptions options, PaperSheet sheet, string notice, string lead)
    {
        (_layout, _options, Sheet) = (layout, options, sheet);
        PdfRoom room = PdfRoom.Of(sheet, PaperLook.Sheet, notice);
        int caption = sheet.Large ? 3 : 2;
        double least = (sheet.Large ? room.Type.Small : PdfFile.Readable) / options.LabelSize;
        double marks = 2 * DiagramPieceDrawing.MarkRow * options.LabelSize;
        IsUnderTitle = layout.Sheet.Width * least <= room.Width && layout.Sheet.Height * least <= room.UnderTitle(lead, caption);
        double height = IsUnderTitle ? room.UnderTitle(lead, caption) : room.ForDrawing(caption);
        _pieces = IsUnderTitle ? DiagramPieces.Linked(layout, layout.Sheet.Width, layout.Sheet.Height) : DiagramPieces.Linked(layout, room.Width / least, (height / least) - marks);
        _scale = Math.Min(Largest * (sheet.Large ? 2 : 1), _pieces.Select(p => DiagramPieceDrawing.SizeOf(p, options)).Min(s => Math.Min(room.Width / s.Width, height / s.Height)));
    }

    /// <summary>Whether it has room under the title; else it stands on pages of its own.</summary>
    public bool IsUnderTitle { get; }

    /// <summary>As it lies for them.</summary>
    public PaperSheet Sheet { get; }

    private double Letters => _scale * _options.LabelSize;

    /// <param name="book">Whose system.</param>
    /// <param name="system">A name of the book's.</param>
    /// <param name="sheet">What it is for.</param>
    /// <param name="notice">At the foot of the sheet.</param>
    /// <param name="lead">The sentence under the title.</param>
    /// <param name="units">Said beside those of the book, in what a gauge works out too.</param>
    /// <returns>Null where the system has no diagram.</returns>
    public static DiagramPlates? Of(ClassBook book, string system, PaperSheet sheet, string notice, string lead, PaperUnits units)
    {
        DiagramInput input = DiagramInput.Of(book, system);
        input = input with { Nodes = [.. input.Nodes.Select(n => n with { Detail = UnitWords.In(n.Detail, units) })] };
        if (input.Nodes.IsEmpty)
        {
            return null;
        }

        (DiagramOptions Options, DiagramLayout Layout)[] layouts = [.. s_labels.Select(l => new DiagramOptions { Interactive = false, Truth = false, LabelSize = l }).Select(o => (o, DiagramLayout.Of(input, o)))];
        HashSet<string> names = Words(layouts[0].Layout);
        return layouts.Where(l => names.IsSubsetOf(Words(l.Layout))) // where larger names have no room, some are left out
            .SelectMany(l => new[] { sheet, sheet.Turned }.Distinct().Select(s => new DiagramPlates(l.Layout, l.Options, s, notice, lead)))
            .OrderByDescending(p => p.IsUnderTitle).ThenBy(p => p._pieces.Length).ThenByDescending(p => Math.Min(p.Letters, Ample)).ThenBy(p => p._options.LabelSize).First();
    }

    /// <summary>The pictures, one a piece.</summary>
    /// <param name="book">Whose system.</param>
    /// <param name="system">A name of the book's.</param>
    public IEnumerable<PaperBlock.Picture> Pictures(ClassBook book, string system)
    {
        DiagramState state = DiagramState.Usual(book);
        string how = Say.It("A valve’s handle lies in line when open and across when closed; all stands as usual.");
        foreach (DiagramPiece piece in _pieces)
        {
            bool all = _pieces.Length == 1;
            string nodes = string.Join(", ", _layout.Input.Nodes.Where(n => all || Shows(piece, n)).Select(n => n.Label).Where(l => l.Length > 0).Distinct(StringComparer.Ordinal));
            PaperText caption = PaperText.Strong(all ? Say.It("Plate.") : Say.With($"Plate, part {piece.Number} of {_pieces.Length}."));
            yield return new PaperBlock.Picture(DiagramPieceDrawing.Render(_layout, piece, state, _options), all ? Say.With($"System diagram of {system}: {nodes}.") : Say.With($"System diagram of {system}, part {piece.Number} of {_pieces.Length}: {nodes}."))
            {
                Caption = all ? caption.And(" " + how) : piece.Number == 1 ? caption.And(" " + Say.It("An arrowhead at an edge says in which part it goes on.") + " " + how) : caption,
                Scale = _scale,
            };
        }
    }

    private static HashSet<string> Words(DiagramLayout layout) => [.. layout.Labels.SelectMany(l => l.Text.Split(' '))];

    private bool Shows(DiagramPiece piece, DiagramNode node) =>
        _layout.Bodies.Any(b => b.Node == node && b.Box.DistanceTo(piece.Box) <= 0) || _layout.Parts.Any(p => p.Node == node && p.Box.DistanceTo(piece.Box) <= 0) || _layout.Instruments.Any(i => i.Node == node && i.Box.DistanceTo(piece.Box) <= 0);
}
