using System.Collections.Immutable;
using Sightglass.Basics.Diagnostics;
using Sightglass.Basics.Quantities;

namespace Sightglass.Book.Model;

/// <summary>A parameter as given: the SI number, the text, the names, or the table rows.</summary>
public sealed record ParameterValue(Span Span)
{
    public double Number { get; init; }

    public Unit? Unit { get; init; }

    public string Text { get; init; } = "";

    public ImmutableArray<string> Names { get; init; } = [];

    /// <summary>Of pins: their numbers, each to the name at the same place in <see cref="Names"/>.</summary>
    public ImmutableArray<int> Pins { get; init; } = [];

    /// <summary>Rows of a table, SI.</summary>
    public ImmutableArray<ImmutableArray<double>> Rows { get; init; } = [];

    /// <summary>For position maps, SI.</summary>
    public ImmutableSortedDictionary<string, double> ByPosition { get; init; } = ImmutableSortedDictionary<string, double>.Empty;
}
