namespace Sightglass.Cli.Books;

/// <summary>Finds the book that is meant where none is named: the folder one stands in, one that holds the card, or the demo. A name alone may be that of a folder under <c>books</c>.</summary>
internal static class BookFolderFinder
{
    private const string Shelf = "books";
    private const string Demo = "books/curlew";

    /// <param name="named">As given, or null.</param>
    /// <param name="near">A file that may belong to a book, or null.</param>
    /// <returns>A folder, as it is to be shown; null where there is none.</returns>
    public static string? Find(string? named, string? near = null)
    {
        if (named is not null)
        {
            return Directory.Exists(named) ? named : named.Length > 0 && Directory.Exists(Path.Combine(Shelf, named)) ? Path.Combine(Shelf, named).Replace('\\', '/') : null;
        }

        if (near is not null && File.Exists(near) && Above(Path.GetDirectoryName(Path.GetFullPath(near))!) is { } holder)
        {
            return Path.GetRelativePath(Directory.GetCurrentDirectory(), holder);
        }

        return IsBook(".") ? "." : Directory.Exists(Demo) ? Demo : null;
    }

    private static string? Above(string folder)
    {
        for (string? f = folder; f is not null; f = Path.GetDirectoryName(f))
        {
            if (IsBook(f))
            {
                return f;
            }
        }

        return null;
    }

    private static bool IsBook(string folder)
    {
        try
        {
            return Directory.EnumerateFiles(folder, "*.yaml")
                .Any(f => File.ReadLines(f).Take(200).Any(l => l.StartsWith("book:", StringComparison.Ordinal)));
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            return false;
        }
    }
}
