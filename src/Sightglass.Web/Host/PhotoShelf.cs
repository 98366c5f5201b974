using Sightglass.Book.Model;
using Sightglass.Paper.Photos;
using Sightglass.Storage.WalkDowns;
using Sightglass.Web.Live;

namespace Sightglass.Web.Host;

/// <summary>Pictures of the machine that is served: its book's, and those that walk-downs found and nobody has decided on.</summary>
internal static class PhotoShelf
{
    /// <summary>For one paper.</summary>
    public static PaperAlbum Album(BookShelf shelf, ClassBook book, DataDesk data)
    {
        FoundPhotos found = new(data.Folder);
        return new PaperAlbum(found.Into(book), p => found.Open(p) ?? PaperAlbum.Read(shelf.Folder, p));
    }

    /// <summary>A book with what was found on its machine.</summary>
    public static ClassBook With(ClassBook book, DataDesk data) => new FoundPhotos(data.Folder).Into(book);

    /// <summary>A photo that was found, for a page; null where no finding of this book has it.</summary>
    public static PhotoFile? Found(BookShelf shelf, string name, DataDesk data)
    {
        FoundPhotos found = new(data.Folder);
        IEnumerable<ClassBook> machines = shelf.RoadNumbers.Select(n => shelf.BookOf(n, null)).Append(shelf.Book);
        return machines.SelectMany(m => found.Into(m).Pictures.Values).FirstOrDefault(p => p.File == FoundPhotos.Root + name) is { } picture && found.Open(picture) is { } bytes ? PhotoFile.Read(bytes) : null;
    }
}
