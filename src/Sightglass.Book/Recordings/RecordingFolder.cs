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
            return RecordingSource.Decode(bytes.AsSpan(0, stream.ReadAtLeast(bytes, bytes.Length, throwOnEndOfStream: false)), file, found);
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            found.Add(BookMessages.Unreadable(new SourceText(file, "").Between(0, 0), e.Message));
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
