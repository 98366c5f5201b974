using Sightglass.Basics.Diagnostics;

namespace Sightglass.Book.Model;

/// <summary>Something that does not come about, and is looked into: which fact is wanted, and where it would hold if nothing were wrong. What keeps it from holding is worked out, never written down.</summary>
/// <param name="Name">What is said to be wrong: <c>it does not load</c>.</param>
/// <param name="Span">Where it is described.</param>
public sealed record Search(string Name, Span Span)
{
    public string Text { get; init; } = "";

    /// <summary>The fact that is to come to hold.</summary>
    public required string Wanted { get; init; }

    /// <summary>Where the fact is named.</summary>
    public required Span WantedSpan { get; init; }

    /// <summary>A situation in which it comes to hold while nothing is wrong.</summary>
    public required string Situation { get; init; }

    /// <summary>Seconds until it holds.</summary>
    public double Within { get; init; } = 60;
}
