using Sightglass.Book.Model;
using Sightglass.Paper.Photos;
using Sightglass.Storage;
using Sightglass.Storage.WalkDowns;

namespace Sightglass.Cli.Data;

/// <summary>The pictures of a machine: its book's, and those of walk-downs that were kept.</summary>
internal static class KeptPhotos
{
    /// <summary>Nothing is made where nothing was ever kept; a folder that the pages have open is told, and the book's pictures stay.</summary>
    /// <param name="dataNamed">The data folder; the book's usual one where null.</param>
    /// <param name="bookFolder">The book's.</param>
    /// <param name="book">Of a road number, or the class as described.</param>
    /// <param name="error">Is told what is wrong.</param>
    public static PaperAlbum Album(string? dataNamed, string bookFolder, ClassBook book, TextWriter error)
    {
        string folder = dataNamed ?? DataFolder.Usual(bookFolder);
        if (!Directory.Exists(folder))
        {
            return PaperAlbum.Of(book, bookFolder);
        }

        try
        {
            using DataFolder data = DataFolder.Open(folder);
            FoundPhotos found = new(data);
            ClassBook all = found.Into(book);
            Dictionary<string, byte[]> files = all.Pictures.Values.Select(p => (p.File, Bytes: found.Open(p))).Where(f => f.Bytes is not null).ToDictionary(f => f.File, f => f.Bytes!, StringComparer.Ordinal);
            return new PaperAlbum(all, p => files.GetValueOrDefault(p.File) ?? PaperAlbum.Read(bookFolder, p));
        }
        catch (DataFolderException refused)
        {
            error.WriteLine($"Photos of walk-downs are left out. {refused.Message}");
            return PaperAlbum.Of(book, bookFolder);
        }
    }
}
