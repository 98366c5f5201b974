using Sightglass.Book.Model;
using Sightglass.Storage;
using Sightglass.Storage.Notes;
using Sightglass.Training.Defects;

namespace Sightglass.Cli.Data;

/// <summary>Defects that were written down, for verbs that only tell of them.</summary>
internal static class KeptDefects
{
    /// <summary>Nothing is made where nothing was ever kept; a folder that the pages have open is told, and the rest goes on.</summary>
    /// <param name="dataNamed">The data folder; the book's usual one where null.</param>
    /// <param name="bookFolder">The book's.</param>
    /// <param name="book">Of a road number; a class has none.</param>
    /// <param name="error">Is told what is wrong.</param>
    public static Defect[] Of(string? dataNamed, string bookFolder, ClassBook book, TextWriter error)
    {
        string folder = dataNamed ?? DataFolder.Usual(bookFolder);
        if (book.RoadNumberInUse is null || !Directory.Exists(folder))
        {
            return [];
        }

        try
        {
            using DataFolder data = DataFolder.Open(folder);
            return [.. new DefectDesk(data, TimeProvider.System).All(book)];
        }
        catch (DataFolderException refused)
        {
            error.WriteLine($"Open defects are not told. {refused.Message}");
            return [];
        }
    }
}
