using System.Collections.Immutable;
using System.Text;
using Sightglass.Basics.Diagnostics;
using Sightglass.Book.Messages;
using Sightglass.Book.Yaml;

namespace Sightglass.Book.Readers;

/// <summary>
/// Gathers the texts of a book's folder within limits: ordinary files below it only, in ordinal order of their paths. Links are not followed,
/// names that begin with a point are passed over, files that are no text are refused.
/// </summary>
/// <param name="root">The folder.</param>
/// <param name="limits">How much is read.</param>
/// <param name="found">Takes what is refused.</param>
/// <param name="before">What stands before the paths of its files: the way to it from the book's folder.</param>
internal sealed class BookFolder(string root, YamlLimits limits, Findings found, string before = "")
{
    private const int DeepestFolder = 16;
    private readonly List<string> _files = [];
    private long _total;
    private int _seen;

    public ImmutableArray<SourceText> Yaml { get; private set; } = [];

    public ImmutableArray<SourceText> Cards { get; private set; } = [];

    public void Read()
    {
        if (!Directory.Exists(root))
        {
            found.Add(BookMessages.NoFolder(root));
            return;
        }

        if (!Walk(root, 0))
        {
            return;
        }

        _files.Sort(StringComparer.Ordinal);
        Yaml = Texts(".yaml");
        Cards = Texts(".card");
    }

    private ImmutableArray<SourceText> Texts(string extension) =>
        [.. _files.Where(f => f.EndsWith(extension, StringComparison.Ordinal)).Select(Text).OfType<SourceText>()];

    private bool Walk(string folder, int depth)
    {
        try
        {
            foreach (FileSystemInfo entry in new DirectoryInfo(folder).EnumerateFileSystemInfos())
            {
                if (++_seen > limits.FolderEntries || depth > DeepestFolder)
                {
                    found.Add(depth > DeepestFolder
                        ? BookMessages.FoldersTooDeep(Place(folder), DeepestFolder)
                        : BookMessages.TooManyFiles(Place(folder), limits.FolderEntries));
                    return false;
                }

                if (!entry.Name.StartsWith('.') && !Take(entry, depth))
                {
                    return false;
                }
            }

            return true;
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            found.Add(BookMessages.Unreadable(Place(folder), e.Message));
            return true;
        }
    }

    private bool Take(FileSystemInfo entry, int depth)
    {
        bool isFolder = entry is DirectoryInfo;
        if (!isFolder && !entry.Name.EndsWith(".yaml", StringComparison.Ordinal) && !entry.Name.EndsWith(".card", StringComparison.Ordinal))
        {
            return true;
        }

        if (entry.LinkTarget is not null)
        {
            found.Add(BookMessages.Link(Place(entry.FullName)));
            return true;
        }

        if (isFolder && depth == 0 && before.Length == 0 && entry.Name == Language.WordsReader.Folder)
        {
            return true; // other languages are read when they are asked for
        }

        if (isFolder)
        {
            return Walk(entry.FullName, depth + 1);
        }

        _files.Add(entry.FullName);
        return true;
    }

    private SourceText? Text(string path)
    {
        try
        {
            byte[]? bytes = Bytes(path);
            return bytes is null ? null : Decode(bytes, Relative(path));
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            found.Add(BookMessages.Unreadable(Place(path), e.Message));
            return null;
        }
    }

    /// <summary>The bytes of a file. What has no length (an empty file, a pipe, a device) is not opened, so that nothing can hang.</summary>
    private byte[]? Bytes(string path)
    {
        long length = new FileInfo(path).Length;
        _total += length;
        if (length > limits.FileBytes || _total > limits.TotalBytes)
        {
            found.Add(length > limits.FileBytes
                ? BookMessages.TooLarge(Place(path), "the file", limits.FileBytes)
                : BookMessages.TooLarge(Place(path), "the book up to here", limits.TotalBytes));
            return null;
        }

        if (length == 0)
        {
            return [];
        }

        byte[] bytes = new byte[length];
        using FileStream stream = File.OpenRead(path);
        int read = stream.ReadAtLeast(bytes, bytes.Length, throwOnEndOfStream: false);
        return bytes[..read];
    }

    private SourceText? Decode(byte[] bytes, string name)
    {
        if (bytes.AsSpan() is [0xFF, 0xFE, ..] or [0xFE, 0xFF, ..])
        {
            found.Add(BookMessages.NotUtf8(Place(name, ""), "the file is written in UTF-16"));
            return null;
        }

        ReadOnlySpan<byte> text = bytes.AsSpan() is [0xEF, 0xBB, 0xBF, ..] ? bytes.AsSpan(3) : bytes;
        try
        {
            return new(name, new UTF8Encoding(false, throwOnInvalidBytes: true).GetString(text));
        }
        catch (DecoderFallbackException e)
        {
            string before = Encoding.UTF8.GetString(text[..Math.Clamp(e.Index, 0, text.Length)]);
            SourceText source = new(name, before);
            found.Add(BookMessages.NotUtf8(source.Between(before.Length, before.Length), "a byte here is not UTF-8"));
            return null;
        }
    }

    private string Relative(string path) => before + Path.GetRelativePath(root, path).Replace('\\', '/');

    private Span Place(string path) => Place(Relative(path), "");

    private static Span Place(string name, string text) => new SourceText(name, text).Between(0, 0);
}
