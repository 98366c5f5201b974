using System.Collections.Immutable;
using Sightglass.Basics.Diagnostics;
using Sightglass.Basics.Quantities;

namespace Sightglass.Book.Model;

/// <summary>
/// One starting value. A number is drawn uniformly between <see cref="From"/> and <see cref="To"/> (SI, equal when fixed), of whole ones each as likely;
/// a choice is drawn from <see cref="OneOf"/>.
/// </summary>
public sealed record StartValue(string Name, Span Span)
{
    public double From { get; init; }

    public double To { get; init; }

    public Unit? Unit { get; init; }

    /// <summary>Only whole numbers are drawn; both ends are whole.</summary>
    public bool IsWhole { get; init; }

    public ImmutableArray<string> OneOf { get; init; } = [];
}
