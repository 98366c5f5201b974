using System.Collections.Immutable;
using Sightglass.Basics.Diagnostics;

namespace Sightglass.Book.Model;

/// <summary>A fault in a situation: on one of several items, from a moment, with values.</summary>
public sealed record FaultStart(string Fault, ImmutableArray<string> Items, Span Span)
{
    /// <summary>Seconds after the start, drawn between the two.</summary>
    public double AfterFrom { get; init; }

    public double AfterTo { get; init; }

    /// <summary>Chance that it is there at all, 0…1.</summary>
    public double Chance { get; init; } = 1;

    public ImmutableArray<StartValue> Values { get; init; } = [];
}
