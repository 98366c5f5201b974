using System.Collections.Immutable;
using Sightglass.Basics.Formulas;

namespace Sightglass.Book.Rules;

/// <summary>Published limits of one country or body, read from a folder and checked.</summary>
public sealed record RuleSet
{
    /// <summary>The publication, such as <c>US Code of Federal Regulations, Title 49</c>.</summary>
    public required string Title { get; init; }

    public required string Edition { get; init; }

    /// <summary>What a reader should know of it as a whole.</summary>
    public string Text { get; init; } = "";

    public ImmutableSortedDictionary<string, RuleQuantity> Quantities { get; init; } = ImmutableSortedDictionary<string, RuleQuantity>.Empty;

    /// <summary>The names that formulas of rows use; ids count from 0.</summary>
    public required NameTable Names { get; init; }

    /// <summary>In the order of the files.</summary>
    public ImmutableArray<RuleRow> Rows { get; init; } = [];
}
