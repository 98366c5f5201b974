using System.Collections.Immutable;
using Sightglass.Book.Changes;

namespace Sightglass.Web.Recordings;

/// <summary>What came of writing files into the book.</summary>
/// <param name="Says">Where they are, or why they are nowhere.</param>
/// <param name="Files">What was written, or would have been.</param>
/// <param name="IsIn">Whether they are in the book.</param>
/// <param name="Recording">The recording that was written, or null.</param>
/// <param name="Drill">The drill that was written, or null.</param>
public sealed record MadeFiles(string Says, ImmutableArray<NewFile> Files, bool IsIn, string? Recording, string? Drill)
{
    /// <summary>A file of the book before and after; null where none was changed.</summary>
    public ChangedFile? Changed { get; init; }
}
