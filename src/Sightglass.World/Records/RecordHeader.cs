using System.Text.Json.Serialization;

namespace Sightglass.World.Records;

/// <summary>The first line of a record.</summary>
/// <param name="Format">Version of the record's format.</param>
/// <param name="Book">The book's title.</param>
/// <param name="BookHash">Hash of the book's files, hexadecimal.</param>
/// <param name="Start">Where the world started.</param>
/// <param name="From">The record that it goes on from, which it repeats up to there; null for one of its own.</param>
public sealed record RecordHeader(
    int Format, string Book, string BookHash, SessionStart Start, [property: JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)] RecordOrigin? From = null)
{
    /// <summary>Raised when older records can no longer be read as they stand.</summary>
    public const int CurrentFormat = 1;
}
