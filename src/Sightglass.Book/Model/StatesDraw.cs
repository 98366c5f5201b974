using System.Collections.Immutable;
using Sightglass.Basics.Diagnostics;

namespace Sightglass.Book.Model;

/// <summary>States that a situation draws from: rows of a recording, of which a case has one as a whole.</summary>
/// <param name="Recording">The name of the recording.</param>
/// <param name="Span">Where it is named.</param>
public sealed record StatesDraw(string Recording, Span Span)
{
    /// <summary>The recording; null where the book has none of that name.</summary>
    public Recording? Of { get; init; }

    /// <summary>The first moment as the recording writes it; null: its beginning.</summary>
    public string? From { get; init; }

    /// <summary>The last moment; null: its end.</summary>
    public string? To { get; init; }

    /// <summary>At least so many seconds between two rows; 0: every row.</summary>
    public double Every { get; init; }

    /// <summary>Its rows that are drawn from, each as likely; empty where the file was not read.</summary>
    public ImmutableArray<int> Rows { get; init; } = [];
}
