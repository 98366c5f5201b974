using System.Collections.Immutable;
using Sightglass.Basics.Diagnostics;

namespace Sightglass.Book.Model;

/// <summary>One vehicle of the class with what differs on it.</summary>
public sealed record RoadNumber(string Number, Span Span, ImmutableArray<Modification> Modifications)
{
    /// <summary>Whether any item differs from the class's.</summary>
    public bool IsModified => Modifications.Any(m => m.Changes.Length > 0);
}
