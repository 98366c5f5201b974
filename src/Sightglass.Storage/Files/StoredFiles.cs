using System.Security.Cryptography;

namespace Sightglass.Storage.Files;

/// <summary>Files beside the database. A file's name is the SHA-256 of what is in it: the same picture twice is one file, and a changed one is seen.</summary>
public sealed class StoredFiles
{
    private const int NameLength = 64;
    private readonly string _folder;
    private int _halves;

    internal StoredFiles(string folder) => _folder = folder;

    /// <summary>Keeps a file; it is on disk when this returns.</summary>
    /// <returns>Its name: 64 lower-case hexadecimal digits.</returns>
    public string Put(ReadOnlySpan<byte> content)
    {
        string name = Convert.ToHexStringLower(SHA256.HashData(content));
        string path = PathOf(name);
        if (File.Exists(path))
        {
            return name;
        }

        Directory.CreateDirectory(Path.GetDirectoryName(path)!);
        string half = $"{path}.{Interlocked.Increment(ref _halves)}";
        using (FileStream file = new(half, FileMode.Create, FileAccess.Write))
        {
            file.Write(content);
            file.Flush(flushToDisk: true);
        }

        File.Move(half, path, overwrite: true);
        return name;
    }

    /// <returns>Null where there is no such file, or the name is none.</returns>
    public FileStream? Open(string name) => IsName(name) && File.Exists(PathOf(name)) ? File.OpenRead(PathOf(name)) : null;

    private static bool IsName(string name) => name.Length == NameLength && name.All(char.IsAsciiHexDigitLower);

    private string PathOf(string name) => Path.Combine(_folder, name[..2], name);
}
