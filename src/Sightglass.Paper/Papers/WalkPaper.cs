using Sightglass.Basics.Language;
using Sightglass.Book.Model;
using Sightglass.Drawing.Strip;
using Sightglass.Paper.Document;
using Sightglass.Paper.Photos;

namespace Sightglass.Paper.Papers;

/// <summary>The walk round the machine for a wall: both long sides, each with the end that follows it, and every name.</summary>
public static class WalkPaper
{
    private const int PhotosAcross = 3;

    /// <param name="book">Whose machine.</param>
    /// <param name="address">Where the walk is found on a page; null for none.</param>
    /// <param name="letters">Size of names in the drawing's pixels: more for a sheet that is looked at from afar.</param>
    /// <param name="album">Pictures of the machine; null for none.</param>
    public static PaperDocument Of(ClassBook book, string? address = null, double letters = 13, PaperAlbum? album = null)
    {
        ArgumentNullException.ThrowIfNull(book);
        Side first = book.WalkStart;
        bool fromRight = first is Side.Right or Side.Rear;
        List<PaperBlock> blocks = [new PaperBlock.Heading(1, Say.With($"{book.Title}: the walk round the machine"))];
        blocks.Add(Row(book, fromRight ? Side.Right : Side.Left, fromRight ? Side.Rear : Side.Front, letters));
        blocks.Add(Row(book, fromRight ? Side.Left : Side.Right, fromRight ? Side.Front : Side.Rear, letters));
        if (album?.Of(book.ItemsInOrder.Select(i => i.Name), PhotosAcross) is { IsEmpty: false } photos)
        {
            blocks.Add(new PaperBlock.Photos(photos) { Beside = true });
        }

        if (address is not null)
        {
            blocks.Add(new PaperBlock.Code(address, Say.It("The walk on its page.")));
        }

        return new PaperDocument(Say.With($"{book.Title}: the walk round the machine"), PaperLook.Poster, [.. blocks]) { Style = "walk", Machine = PaperWords.Machine(book), Notice = PaperWords.Notice(book) };
    }

    /// <summary>Size of names for a sheet: a large one is looked at from afar.</summary>
    public static double LettersOn(string sheet)
    {
        const double near = 13;
        const double afar = 18;
        return sheet == PaperSheet.A2.Name ? afar : near;
    }

    private static PaperBlock.Picture Row(ClassBook book, Side side, Side end, double letters)
    {
        StripOptions options = new() { Sides = [side, end], Interactive = false, Hazards = true, LabelSize = letters };
        string[] names = [.. book.PlacesInOrder.Where(p => p.OnGround).Select(p => p.Name)];
        return new PaperBlock.Picture(StripDrawing.Render(book, options), Alt(book, side, names))
        {
            MostHeight = 0.9,
        };
    }

    private static string Alt(ClassBook book, Side side, IEnumerable<string> places) => side == Side.Right
        ? Say.With($"Right side and Rear of {book.Title} unrolled in walking order, every item with its name. Places on the ground: {Say.Names(places)}.")
        : Say.With($"Left side and Front of {book.Title} unrolled in walking order, every item with its name. Places on the ground: {Say.Names(places)}.");
}
