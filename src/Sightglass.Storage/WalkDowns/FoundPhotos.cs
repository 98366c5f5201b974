using Microsoft.EntityFrameworkCore;
using Sightglass.Basics.Diagnostics;
using Sightglass.Basics.Language;
using Sightglass.Book.Model;
using Sightglass.Training.Proposals;
using Sightglass.Training.WalkDowns;

namespace Sightglass.Storage.WalkDowns;

/// <summary>Photos of walk-downs as pictures of the machine, until somebody takes them into the book or refuses them.</summary>
public sealed class FoundPhotos(DataFolder data)
{
    /// <summary>Before the name of a stored file, where a picture of a book has the path of its file.</summary>
    public const string Root = "found/";

    /// <summary>The book with what was found on its machine: of its road number, or where only the class was known.</summary>
    public ClassBook Into(ClassBook book)
    {
        ArgumentNullException.ThrowIfNull(book);
        return book with { Pictures = book.Pictures.AddRange(Of(book).Select(f => KeyValuePair.Create($"{Root}{f.Entry.Id:D}", f.Picture))) };
    }

    /// <summary>The file of a picture that was found; null for one of the book, and where the file is gone.</summary>
    public byte[]? Open(Picture picture)
    {
        ArgumentNullException.ThrowIfNull(picture);
        if (!picture.File.StartsWith(Root, StringComparison.Ordinal) || data.Files.Open(picture.File[Root.Length..]) is not { } file)
        {
            return null;
        }

        using (file)
        {
            byte[] bytes = new byte[file.Length];
            file.ReadExactly(bytes);
            return bytes;
        }
    }

    private List<(WalkDownEntry Entry, Picture Picture)> Of(ClassBook book)
    {
        using RecordsContext records = data.Records();
        HashSet<(Guid, string?)> decided = [.. records.Proposals.AsNoTracking().Where(p => p.Book == book.Title && p.File != null && (p.State == ProposalState.Accepted || (p.State == ProposalState.Refused && p.DecidedBy != ""))).Select(p => new { p.OriginId, p.File }).AsEnumerable().Select(p => (p.OriginId ?? Guid.Empty, p.File))];
        return
        [
            .. records.WalkDownEntries.AsNoTracking().Where(e => e.Book == book.Title && e.Photo != null).AsEnumerable()
                .Where(e => (e.RoadNumber is null || e.RoadNumber == book.RoadNumberInUse) && !decided.Contains((e.Id, e.Photo)))
                .OrderBy(e => e.ReceivedAt).ThenBy(e => e.Id).Select(e => (e, PictureOf(e, book))),
        ];
    }

    /// <summary>A photo on which nothing is marked is of its item as a whole.</summary>
    private static Picture PictureOf(WalkDownEntry entry, ClassBook book)
    {
        Picture picture = FoundPicture.Of(entry, book, Root + entry.Photo, entry.RoadNumber);
        PictureMark[] whole = picture.Marks.IsEmpty && entry.Item is { } item && book.Items.ContainsKey(item) ? [new(item, 0, 0, 1, 1)] : [];
        Span last = book.Pictures.Values.Select(p => p.Span).DefaultIfEmpty().Max(); // what the book says of the same machine comes first
        return picture with { Span = last, Name = Say.With($"{Say.Book(entry.Item ?? entry.Place)}, as found by {entry.By}"), Marks = [.. picture.Marks, .. whole] };
    }
}
