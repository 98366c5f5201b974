using System.Collections.Immutable;
using Sightglass.Basics.Diagnostics;

namespace Sightglass.Book.Model;

/// <summary>A walk for a purpose as the author wants it: what is to be shown, and within which bounds. The way itself is found from it.</summary>
public sealed record PlannedWalk(string Name, Span Span, string Text)
{
    /// <summary>Where it begins; null for the place at which the walk round the machine does.</summary>
    public string? From { get; init; }

    /// <summary>Where it ends; null where any last stop will do.</summary>
    public string? To { get; init; }

    /// <summary>Systems all of whose items are shown.</summary>
    public ImmutableArray<string> Systems { get; init; } = [];

    /// <summary>Items that are shown.</summary>
    public ImmutableArray<string> Items { get; init; } = [];

    /// <summary>Cards whose items are shown.</summary>
    public ImmutableArray<string> Cards { get; init; } = [];

    /// <summary>Items that are shown one after the other in this order.</summary>
    public ImmutableArray<string> InOrder { get; init; } = [];

    /// <summary>Places at which nobody of the group may be.</summary>
    public ImmutableArray<string> Closed { get; init; } = [];

    /// <summary>What to bring, beside what its protections need.</summary>
    public ImmutableArray<string> Kit { get; init; } = [];

    /// <summary>The role whose places they keep to, or null.</summary>
    public string? Role { get; init; }
}
