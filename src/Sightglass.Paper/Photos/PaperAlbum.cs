using System.Collections.Immutable;
using Sightglass.Basics.Language;
using Sightglass.Book.Model;
using Sightglass.Paper.Papers;

namespace Sightglass.Paper.Photos;

/// <summary>The pictures of one machine for one paper: each is shown once, where it is first of use.</summary>
/// <param name="book">With the pictures of its road number; those found in walk-downs among them.</param>
/// <param name="open">Opens the file of a picture; null where there is none.</param>
public sealed class PaperAlbum(ClassBook book, Func<Picture, byte[]?> open)
{
    /// <summary>A mark that covers this much of a picture, across and down, says what all of it is.</summary>
    private const double Whole = 0.98;

    private readonly HashSet<string> _shown = [];

    /// <summary>An album that reads the book's own folder.</summary>
    /// <param name="book">Whose pictures.</param>
    /// <param name="folder">The book's.</param>
    public static PaperAlbum Of(ClassBook book, string folder) => new(book, p => Read(folder, p));

    /// <summary>The file of a picture in a book's folder; null where there is none.</summary>
    public static byte[]? Read(string folder, Picture picture)
    {
        ArgumentNullException.ThrowIfNull(picture);
        string path = Path.GetFullPath(Path.Combine(folder, picture.File));
        return path.StartsWith(Path.GetFullPath(folder) + Path.DirectorySeparatorChar, StringComparison.Ordinal) && File.Exists(path) ? File.ReadAllBytes(path) : null;
    }

    /// <summary>Pictures of things, those with most of them first; none that was shown before, and none whose file cannot be read.</summary>
    /// <param name="items">Names of the book's items.</param>
    /// <param name="most">So many at most.</param>
    public ImmutableArray<PaperPhoto> Of(IEnumerable<string> items, int most)
    {
        Item[] known = [.. items.Select(book.Items.GetValueOrDefault).OfType<Item>().Distinct()];
        // The machine's own picture of a thing, where it has one, stands for that of the class.
        var wanted = known.Select(i => (Item: i, Picture: book.PicturesOf(i).FirstOrDefault())).Where(w => w.Picture is not null && !_shown.Contains(w.Picture.File)).GroupBy(w => w.Picture!.File, w => w, StringComparer.Ordinal).OrderByDescending(g => g.Count());
        List<PaperPhoto> photos = [];
        foreach (var of in wanted)
        {
            if (photos.Count < most && of.First().Picture is { } picture && open(picture) is { } bytes && PhotoFile.Read(bytes) is { } file)
            {
                _shown.Add(picture.File);
                photos.Add(Photo(picture, file, [.. of.Select(w => w.Item.Name)]));
            }
        }

        return [.. photos];
    }

    private static PaperPhoto Photo(Picture picture, PhotoFile file, HashSet<string> items)
    {
        string name = PaperWords.Named(picture.Name);
        return new(file, "photo/" + picture.File, picture.RoadNumbers.IsEmpty ? name : Say.With($"{name}, as on {string.Join(", ", picture.RoadNumbers)}"), Say.Book(picture.Shows),
        [
            .. picture.Marks.Where(m => items.Contains(m.Item) && (m.Width < Whole || m.Height < Whole)).OrderBy(m => Math.Round(m.X, 2)).ThenBy(m => m.Y)
                .Select((m, i) => new PhotoMark(i + 1, PaperWords.Named(m.Item), m.X, m.Y, m.Width, m.Height)),
        ]);
    }
}
