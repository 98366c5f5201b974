using System.Collections.Immutable;

namespace Sightglass.Book.Kinds;

/// <summary>A fault a kind can have.</summary>
/// <param name="Name">As written, such as <c>leak</c>, <c>stuck</c>, <c>bias</c>.</param>
/// <param name="Parameters">What to say with it: size, height, …</param>
public sealed record KindFault(string Name, string Doc, ImmutableArray<KindParameter> Parameters)
{
    /// <summary>Whether nobody gets by the item while it is there, on the ways that go by it. What stands open can be gone by all the same.</summary>
    public bool Bars { get; init; }

    /// <summary>Whether what is kept in the item cannot be had while it is there.</summary>
    public bool Lacks { get; init; }
}
