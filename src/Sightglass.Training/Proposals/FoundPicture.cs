using System.Collections.Immutable;
using System.Text.Json;
using Sightglass.Book.Model;
using Sightglass.Training.WalkDowns;

namespace Sightglass.Training.Proposals;

/// <summary>A photo of a walk-down as a picture of the book: what was marked on it becomes frames where it names an item, and words where it does not.</summary>
public static class FoundPicture
{
    /// <param name="entry">With a photo.</param>
    /// <param name="book">Whose items may be marked.</param>
    /// <param name="file">Where the photo lies in the book's folder.</param>
    /// <param name="roadNumber">The machine that looks like this; null for all of the class.</param>
    public static Picture Of(WalkDownEntry entry, ClassBook book, string file, string? roadNumber)
    {
        ArgumentNullException.ThrowIfNull(entry);
        ArgumentNullException.ThrowIfNull(book);
        (Item? Item, Mark Mark)[] marks = [.. MarksOf(entry).Select(m => (ItemOf(m.Name, entry, book), m))];
        string words = string.Join(", ", marks.Where(m => m.Item is null && m.Mark.Name.Length > 0).Select(m => m.Mark.Name));
        string note = entry.Note is { Length: > 0 } said ? $" {said.TrimEnd('.')}." : "";
        return new(Path.GetFileNameWithoutExtension(file), default, file, $"{entry.Item ?? entry.Place}, as found by {entry.By}.{note}{(words.Length > 0 ? $" Marked: {words}." : "")}")
        {
            Place = book.Places.ContainsKey(entry.Place) ? entry.Place : null,
            RoadNumbers = roadNumber is null ? [] : [roadNumber],
            Marks = [.. marks.Where(m => m.Item is not null && m.Mark.Width > 0 && m.Mark.Height > 0).Select(m => Within(m.Item!, m.Mark))],
        };
    }

    /// <summary>A mark without a name is of the item that the entry is of.</summary>
    private static Item? ItemOf(string name, WalkDownEntry entry, ClassBook book) => name.Length == 0
        ? entry.Item is { } own ? book.Items.GetValueOrDefault(own) : null
        : book.Items.GetValueOrDefault(name) ?? book.ItemsInOrder.FirstOrDefault(i => string.Equals(i.Name, name, StringComparison.OrdinalIgnoreCase) || string.Equals(i.Label, name, StringComparison.OrdinalIgnoreCase));

    /// <summary>A finger draws beyond the edge: what is beyond is cut off.</summary>
    private static PictureMark Within(Item item, Mark m)
    {
        double x = Math.Min(m.X, 0.99), y = Math.Min(m.Y, 0.99);
        return new(item.Name, x, y, Math.Clamp(m.Width, 0.01, 1 - x), Math.Clamp(m.Height, 0.01, 1 - y));
    }

    private static ImmutableArray<Mark> MarksOf(WalkDownEntry entry) => entry.Marks is { } json ? [.. JsonSerializer.Deserialize<Mark[]>(json, JsonSerializerOptions.Web)!] : [];

    private sealed record Mark(double X, double Y, double Width, double Height, string Name);
}
