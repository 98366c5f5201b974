using System.Collections.Immutable;
using Sightglass.Basics.Diagnostics;

namespace Sightglass.Book.Model;

/// <summary>Something that can be seen, heard or smelled from some places when a condition holds.</summary>
/// <param name="Name">The sentence as cards say it: <c>fuel is seen at the foot of the aft compartment</c>.</param>
public sealed record Sign(string Name, Span Span, string Sense, string Formula, Span FormulaSpan, ImmutableArray<string> Places)
{
    /// <summary>The vehicle it belongs to.</summary>
    public Vehicle Vehicle { get; init; } = Vehicle.Alone;
}
