using Sightglass.Basics.Diagnostics;
using Sightglass.Book.Recordings;

namespace Sightglass.Web.Recordings;

/// <summary>A recorder's file that is being mapped: what it shows by itself, what was said of it so far, and what is wrong with that. It lives as long as the program.</summary>
/// <param name="key">By which an address names it.</param>
/// <param name="source">The file.</param>
/// <param name="look">What it shows by itself.</param>
/// <param name="bytes">The file as it was brought; null where it lies in the book's folder.</param>
/// <param name="mapping">To begin with.</param>
public sealed class MappingDraft(string key, SourceText source, RecordingLook look, byte[]? bytes, RecordingMapping mapping)
{
    /// <summary>By which an address names it.</summary>
    public string Key => key;

    /// <summary>The file.</summary>
    public SourceText Source => source;

    /// <summary>What it shows by itself.</summary>
    public RecordingLook Look => look;

    /// <summary>The file as it was brought; null where it lies in the book's folder.</summary>
    public byte[]? Bytes => bytes;

    /// <summary>What was said last.</summary>
    public RecordingMapping Mapping { get; internal set; } = mapping;

    /// <summary>What the book said when its recording was opened to be changed; null where it is to be a new recording.</summary>
    public RecordingMapping? Opened { get; init; }

    /// <summary>What the book makes of it; null until it was looked at.</summary>
    public MappedRecording? Mapped { get; internal set; }

    /// <summary>The comparison that was asked for last; null where none was since the mapping is as it is.</summary>
    public RecordingWork? Work { get; internal set; }
}
