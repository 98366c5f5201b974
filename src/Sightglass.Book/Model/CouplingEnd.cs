using System.Collections.Immutable;
using Sightglass.Basics.Diagnostics;

namespace Sightglass.Book.Model;

/// <summary>One end of the vehicle: which way it faces and what can be coupled there.</summary>
public sealed record CouplingEnd(string Name, Span Span, Side Faces, ImmutableArray<string> Items)
{
    /// <summary>Lines that go on into the vehicle coupled there: line → the item that is joined, such as a hose, with the place where it is said.</summary>
    public ImmutableSortedDictionary<string, (string Item, Span Span)> Joins { get; init; } = ImmutableSortedDictionary<string, (string Item, Span Span)>.Empty;

    /// <summary>Pairs of these lines whose hoses can be taken for each other, in the order of the file, with the place where it is said.</summary>
    public ImmutableArray<(string Line, string Other, Span Span)> Mistaken { get; init; } = [];

    /// <summary>The place from which people go through this end into the vehicle coupled there, the seconds from there to the end, and the items that they go by; null where nobody can.</summary>
    public (string Place, double Seconds, ImmutableArray<string> Through)? Gangway { get; init; }
}
