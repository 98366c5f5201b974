using System.Collections.Immutable;
using Sightglass.Basics.Diagnostics;

namespace Sightglass.Book.Model;

/// <summary>A photograph or a rendered picture of what stands at a place.</summary>
/// <param name="Name">What it is called.</param>
/// <param name="File">Below the book's folder.</param>
/// <param name="Shows">For those who cannot see it.</param>
public sealed record Picture(string Name, Span Span, string File, string Shows)
{
    /// <summary>From where it is seen; null where that does not matter.</summary>
    public string? Place { get; init; }

    /// <summary>The machines that look like this; all of the class where empty.</summary>
    public ImmutableArray<string> RoadNumbers { get; init; } = [];

    /// <summary>Where items are in it.</summary>
    public ImmutableArray<PictureMark> Marks { get; init; } = [];

    /// <summary>Whether a machine looks like this.</summary>
    public bool IsOf(string? roadNumber) => RoadNumbers.IsEmpty || (roadNumber is not null && RoadNumbers.Contains(roadNumber, StringComparer.Ordinal));
}
