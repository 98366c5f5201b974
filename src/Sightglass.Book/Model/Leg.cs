using System.Collections.Immutable;
using Sightglass.Basics.Diagnostics;

namespace Sightglass.Book.Model;

/// <summary>A way between two places, with the time it takes at an ordinary pace.</summary>
public sealed record Leg(string From, string To, Span Span, double Seconds, string By)
{
    /// <summary>Items that one goes by on it: steps, a door. While one of them cannot be used, nobody gets through.</summary>
    public ImmutableArray<string> Through { get; init; } = [];
}
