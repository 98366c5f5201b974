using System.Text;
using Sightglass.Basics.Diagnostics;
using Sightglass.Book.Messages;
using Sightglass.Book.Readers;
using Sightglass.Book.Yaml;

namespace Sightglass.Book.Recordings;

/// <summary>The text of a recorder's file, from where it lies or as somebody brings it; what is no text in UTF-8, or too large, is refused.</summary>
public static class RecordingSource
{
    /// <summary>Bytes of one file.</summary>
    public static int MostBytes => YamlLimits.Default.FileBytes;

    /// <summary>Files that are found in a folder.</summary>
    private const int MostFiles = 500;

    private const int DeepestFolder = 16;

    /// <summary>The text of a file in a folder, or null after saying why not.</summary>
    /// <param name="folder">The book's.</param>
    /// <param name="file">Below it, with forward slashes.</param>
    /// <param name="found">Takes why not.</param>
    public static SourceText? In(string folder, string file, DiagnosticList found)
    {
        ArgumentNullException.ThrowIfNull(folder);
        ArgumentNullException.ThrowIfNull(file);
        Findings findings = new(found, YamlLimits.Default);
        if (BookPath.IsInside(file))
        {
            return new RecordingFolder(folder, YamlLimits.Default, findings).Read(file, Span.None);
        }

        findings.Add(BookMessages.LeavesFolder(Span.None, file));
        return null;
    }

    /// <summary>The text of bytes, or null after saying why not.</summary>
    /// <param name="bytes">As they were brought.</param>
    /// <param name="name">What the file is called.</param>
    /// <param name="found">Takes why not.</param>
    public static SourceText? Of(ReadOnlySpan<byte> bytes, string name, DiagnosticList found)
    {
        Findings findings = new(found, YamlLimits.Default);
        if (bytes.Length <= MostBytes)
        {
            return Decode(bytes, name, findings);
        }

        findings.Add(BookMessages.RecordingTooLarge(new SourceText(name, "").Between(0, 0), "the recording", MostBytes));
        return null;
    }

    /// <summary>The files of comma-separated values below a folder, in ordinal order, with forward slashes; links and names that begin with a point are passed over.</summary>
    public static IReadOnlyList<string> Files(string folder)
    {
        EnumerationOptions ordinary = new() { RecurseSubdirectories = true, MaxRecursionDepth = DeepestFolder, IgnoreInaccessible = true, AttributesToSkip = FileAttributes.ReparsePoint | FileAttributes.Hidden | FileAttributes.System };
        return !Directory.Exists(folder) ? []
            : [.. Directory.EnumerateFiles(folder, "*", ordinary).Where(f => f.EndsWith(".csv", StringComparison.OrdinalIgnoreCase)).Take(MostFiles).Select(f => Path.GetRelativePath(folder, f).Replace('\\', '/')).Order(StringComparer.Ordinal)];
    }

    /// <summary>The text of bytes that are UTF-8; else null after saying where they are not.</summary>
    internal static SourceText? Decode(ReadOnlySpan<byte> bytes, string file, Findings found)
    {
        if (bytes is [0xFF, 0xFE, ..] or [0xFE, 0xFF, ..])
        {
            found.Add(BookMessages.NotUtf8(new SourceText(file, "").Between(0, 0), "the file is written in UTF-16"));
            return null;
        }

        if (bytes is [(byte)'P', (byte)'K', 3, 4, ..])
        {
            found.Add(BookMessages.NotCsv(new SourceText(file, "").Between(0, 0), file));
            return null;
        }

        bytes = bytes is [0xEF, 0xBB, 0xBF, ..] ? bytes[3..] : bytes;
        try
        {
            return new(file, new UTF8Encoding(false, throwOnInvalidBytes: true).GetString(bytes));
        }
        catch (DecoderFallbackException e)
        {
            string before = Encoding.UTF8.GetString(bytes[..Math.Clamp(e.Index, 0, bytes.Length)]);
            found.Add(BookMessages.NotUtf8(new SourceText(file, before).Between(before.Length, before.Length), "a byte here is not UTF-8"));
            return null;
        }
    }
}
