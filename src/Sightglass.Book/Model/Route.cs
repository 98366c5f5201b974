using System.Collections.Immutable;
using Sightglass.Basics.Diagnostics;

namespace Sightglass.Book.Model;

/// <summary>A line that trains run over, as its track chart has it: stretches one after the other, places by their mileposts.</summary>
public sealed record Route(string Name, Span Span)
{
    public string Text { get; init; } = "";

    /// <summary>Milepost of the start, m.</summary>
    public double From { get; init; }

    /// <summary>Milepost of the end, m.</summary>
    public double To => Stretches.IsEmpty ? From : Stretches[^1].To;

    /// <summary>m from the start to the end.</summary>
    public double Length => To - From;

    /// <summary>In their order, each from where the one before it ends; at least one.</summary>
    public ImmutableArray<Stretch> Stretches { get; init; } = [];

    /// <summary>By their mileposts.</summary>
    public ImmutableArray<RoutePlace> Places { get; init; } = [];

    /// <summary>How the rail may be, the usual one first; at least one.</summary>
    public ImmutableArray<RailCondition> Rails { get; init; } = [];
}
