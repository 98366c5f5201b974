using Sightglass.Basics.Diagnostics;
using Sightglass.Web.Live;

namespace Sightglass.Web.Tests.Recordings;

/// <summary>A copy of the demo book that tests write into.</summary>
internal sealed class CopiedShelf : IDisposable
{
    private readonly string _folder = Directory.CreateTempSubdirectory("sightglass-recordings-").FullName;

    public CopiedShelf()
    {
        string source = Shelves.Folder("curlew");
        foreach (string file in Directory.GetFiles(source, "*", SearchOption.AllDirectories))
        {
            string copy = At(Path.GetRelativePath(source, file));
            Directory.CreateDirectory(Path.GetDirectoryName(copy)!);
            File.Copy(file, copy);
        }

        DiagnosticList found = [];
        Shelf = BookShelf.Open(_folder, found) ?? throw new InvalidOperationException(string.Join('\n', found));
    }

    public BookShelf Shelf { get; }

    public string At(string path) => Path.Combine(_folder, path);

    /// <summary>All files with what is in them.</summary>
    public string[] Files() => [.. Directory.GetFiles(_folder, "*", SearchOption.AllDirectories).Order(StringComparer.Ordinal).Select(f => $"{Path.GetRelativePath(_folder, f)} {Convert.ToHexString(System.Security.Cryptography.SHA256.HashData(File.ReadAllBytes(f)))}")];

    public void Dispose() => Directory.Delete(_folder, recursive: true);
}
