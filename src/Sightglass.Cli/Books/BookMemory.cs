using System.Collections.Concurrent;
using System.Security.Cryptography;
using System.Text;

namespace Sightglass.Cli.Books;

/// <summary>Books read before in this process, for whoever makes many calls in one: a book is read anew when any of its files has changed.</summary>
internal sealed class BookMemory
{
    private readonly ConcurrentDictionary<(string Folder, string Files, bool All), Lazy<BookInspection>> _read = new();

    /// <summary>What reading the book gave, as if it were read now.</summary>
    /// <param name="folder">The book's folder.</param>
    /// <param name="all">Whether cards and situations are read as well.</param>
    /// <param name="read">Reads it.</param>
    public BookInspection Of(string folder, bool all, Func<string, bool, BookInspection> read) =>
        _read.GetOrAdd((Path.GetFullPath(folder), FilesOf(folder), all), _ => new(() => read(folder, all))).Value.As(folder);

    /// <summary>Tells one state of all files in a folder from another, by their names and bytes.</summary>
    private static string FilesOf(string folder)
    {
        using IncrementalHash hash = IncrementalHash.CreateHash(HashAlgorithmName.SHA256);
        IEnumerable<string> files = Directory.Exists(folder) ? Directory.EnumerateFiles(folder, "*", SearchOption.AllDirectories).Order(StringComparer.Ordinal) : [];
        foreach (string file in files)
        {
            hash.AppendData(Encoding.UTF8.GetBytes(file));
            hash.AppendData(File.ReadAllBytes(file));
        }

        return Convert.ToHexString(hash.GetHashAndReset());
    }
}
