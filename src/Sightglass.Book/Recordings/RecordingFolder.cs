using System.Text;
using Sightglass.Basics.Diagnostics;
using Sightglass.Book.Messages;
using Sightglass.Book.Yaml;

namespace Sightglass.Book.Recordings;

/// <summary>Reads the files of recordings from a book's folder: ordinary files below it, within limits, as UTF-8.</summary>
/// <param name="root">The book's folder.</param>
/// <param name="limits">How much is read.</param>
/// <param name="found">Takes what is refused.</param>
internal sealed class RecordingFolder(string root, YamlLimits limits, Findings found)
{
    private long _total;

    /// <summary>The text of a file, or null after saying why not.</summary>
    /// <param name="file">A path that lies inside.</param>
    /// <param name="span">Where it is named.</param>
    public SourceText? Read(string file, Span span)
    {
        if (!IsOrdinary(file))
        {
            found.Add(BookMessages.NoRecordingFile(span, file));
            return null;
        }

        FileInfo info = new(Path.Combine(root, file));
        _total += info.Length;
        if (info.Length > limits.FileBytes || _total > limits.TotalBytes)
        {
            found.Add(BookMessages.RecordingTooLarge(span, info.Length > limits.FileBytes ? "the recording" : "all recordings up to here", info.Length > limits.FileBytes ? limits.FileBytes : limits.TotalBytes));
            return null;
        }

        try
        {
            if (info.Length == 0)
            {
                return new(file, ""); // nor is a pipe or a device opened, which could hang
            }

            byte[] bytes = new byte[info.Length];
            using FileStream stream = info.OpenRead();
            return Decode(bytes.AsSpan(0, stream.ReadAtLeast(bytes, bytes.Length, throwOnEndOfStream: false)), file);
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            found.Add(BookMessages.Unreadable(new SourceText(file, "").Between(0, 0), e.Message));
            return null;
        }
    }

    /// <summary>The text of bytes that are UTF-8; else null after saying where they are not.</summary>
    private SourceText? Decode(ReadOnlySpan<byte> bytes, string file)
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

    /// <summary>Whether it is a file that lies there itself: no link on the way leads elsewhere.</summary>
    private bool IsOrdinary(string file)
    {
        string at = root;
        foreach (string part in file.Split('/'))
        {
            at = Path.Combine(at, part);
            if (new FileInfo(at).LinkTarget is not null)
            {
                return false;
            }
        }

        return File.Exists(at);
    }
}
