using System.Collections.Immutable;

namespace Sightglass.Drawing.Charts;

/// <summary>An axis of a map.</summary>
/// <param name="Words">Name and unit, such as <c>leak, mm</c>.</param>
public sealed record MapAxis(string Words, double From, double To)
{
    /// <summary>Words in equal strips from From to To, in place of numbers.</summary>
    public ImmutableArray<string> Choices { get; init; } = [];
}
