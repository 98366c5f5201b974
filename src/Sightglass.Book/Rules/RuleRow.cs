using System.Collections.Immutable;
using Sightglass.Basics.Diagnostics;
using Sightglass.Basics.Formulas;
using Sightglass.Basics.Quantities;

namespace Sightglass.Book.Rules;

/// <summary>
/// One published limit. It holds a value of the book (<see cref="Value"/>), or one measured in a run (<see cref="Test"/>), against limits, or asks whether something
/// is so (<see cref="Holds"/>). With none of them it says what people do and when, which no book can tell.
/// </summary>
public sealed record RuleRow
{
    /// <summary>Where it is published, such as <c>229.49(a)(1)</c>; names the row.</summary>
    public required string Paragraph { get; init; }

    public required Span Span { get; init; }

    /// <summary>The edition that was read.</summary>
    public required string Edition { get; init; }

    /// <summary>What is limited, in a few words.</summary>
    public required string Title { get; init; }

    /// <summary>The limit in words.</summary>
    public required string Limit { get; init; }

    /// <summary>When and to what it applies, in words.</summary>
    public string Condition { get; init; } = "";

    /// <summary>How it is measured, in words of the paragraph.</summary>
    public string Method { get; init; } = "";

    /// <summary>What is not in the paragraph and was decided by whoever wrote the row.</summary>
    public string Reading { get; init; } = "";

    public RuleConfidence Confidence { get; init; }

    /// <summary>What the book says.</summary>
    public Formula? Value { get; init; }

    public Formula? AtLeast { get; init; }

    public Formula? AtMost { get; init; }

    /// <summary>What must be so.</summary>
    public Formula? Holds { get; init; }

    public RuleTest? Test { get; init; }

    /// <summary>Whether a machine can keep it or not, rather than people.</summary>
    public bool IsOfTheMachine => Value is not null || Holds is not null || Test is not null;

    /// <summary>In which its numbers are shown.</summary>
    public Unit Unit { get; init; } = UnitTable.One;

    /// <summary>The quantities it speaks of, each once.</summary>
    public ImmutableArray<FormulaName> Names =>
        [.. new[] { Test?.BeginsWhen, Test?.OnlyWhile, Test?.Of, Value, Holds, AtLeast, AtMost }.OfType<Formula>().SelectMany(f => f.NamesUsed).DistinctBy(n => n.Id)];
}
