using System.Collections.Immutable;
using Sightglass.Basics.Diagnostics;
using Sightglass.Basics.Quantities;

namespace Sightglass.Book.Model;

/// <summary>What an indication shows.</summary>
public sealed record Reading
{
    /// <summary>The formula as written, or null where the kind supplies it (a sight glass).</summary>
    public string? Formula { get; init; }

    public required Span Span { get; init; }

    /// <summary>Unit of the scale; readings are shown and compared in it.</summary>
    public required Unit Unit { get; init; }

    /// <summary>SI.</summary>
    public double Minimum { get; init; }

    /// <summary>SI.</summary>
    public double Maximum { get; init; }

    /// <summary>SI; the least step the instrument shows.</summary>
    public double Resolution { get; init; }

    /// <summary>SI; the grey bar on the scale.</summary>
    public double? NormalFrom { get; init; }

    public double? NormalTo { get; init; }

    /// <summary>Words for stretches of the scale, such as low, room, full: name → from, to (SI, inclusive).</summary>
    public ImmutableSortedDictionary<string, (double From, double To)> Words { get; init; } =
        ImmutableSortedDictionary<string, (double From, double To)>.Empty;
}
