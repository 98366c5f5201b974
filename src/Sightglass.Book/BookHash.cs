using System.Security.Cryptography;
using System.Text;
using Sightglass.Book.Language;

namespace Sightglass.Book;

/// <summary>Tells one state of a book's files from another, so that a record says which book it was made with.</summary>
public static class BookHash
{
    /// <summary>Hash of the names and bytes of all <c>*.yaml</c> and <c>*.csv</c> files in a folder but those of other languages, which change nothing of what the book means: 16 hexadecimal digits of SHA-256.</summary>
    public static string Of(string folder)
    {
        ArgumentNullException.ThrowIfNull(folder);
        using IncrementalHash hash = IncrementalHash.CreateHash(HashAlgorithmName.SHA256);
        string languages = Path.Combine(folder, WordsReader.Folder) + Path.DirectorySeparatorChar;
        foreach (string file in Directory.EnumerateFiles(folder, "*.*", SearchOption.AllDirectories).Where(f => f.EndsWith(".yaml", StringComparison.Ordinal) || f.EndsWith(".csv", StringComparison.OrdinalIgnoreCase)).Where(f => !f.StartsWith(languages, StringComparison.Ordinal)).Order(StringComparer.Ordinal))
        {
            hash.AppendData(Encoding.UTF8.GetBytes(Path.GetRelativePath(folder, file).Replace('\\', '/')));
            hash.AppendData(File.ReadAllBytes(file));
        }

        return Convert.ToHexStringLower(hash.GetHashAndReset())[..16];
    }
}
