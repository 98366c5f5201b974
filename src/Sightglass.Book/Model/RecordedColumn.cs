using System.Collections.Immutable;
using Sightglass.Basics.Diagnostics;
using Sightglass.Basics.Quantities;

namespace Sightglass.Book.Model;

/// <summary>One column of a recording: what it sets at the start of a world, or what it is only compared with, or both.</summary>
/// <param name="Head">As in the file.</param>
/// <param name="Span">Where the head is named.</param>
public sealed record RecordedColumn(string Head, Span Span)
{
    /// <summary>Starting values as situations write them; one recorded value may set several.</summary>
    public ImmutableArray<string> Sets { get; init; } = [];

    /// <summary>An indication, or a formula of the book's names; null where it is compared with nothing.</summary>
    public FormulaText? Compares { get; init; }

    /// <summary>In what its numbers are; null where it has words.</summary>
    public Unit? Unit { get; init; }

    /// <summary>What its texts mean: a position, or <c>yes</c> and <c>no</c>. A text that is not among them is a position itself.</summary>
    public ImmutableSortedDictionary<string, string> As { get; init; } = ImmutableSortedDictionary<string, string>.Empty;

    /// <summary>How far the machine may be from what was recorded, SI; null where nothing is said.</summary>
    public double? Within { get; init; }

    /// <summary>Positions of what it sets, in order; empty where it sets numbers or nothing.</summary>
    public ImmutableArray<string> Positions { get; init; } = [];

    /// <summary>Whether its fields are words and not numbers.</summary>
    public bool HasWords => Unit is null;
}
