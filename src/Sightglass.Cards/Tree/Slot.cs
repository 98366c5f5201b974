using System.Collections.Immutable;
using Sightglass.Basics.Diagnostics;
using Sightglass.Basics.Quantities;

namespace Sightglass.Cards.Tree;

/// <summary>What fills a gap of a sentence.</summary>
public abstract record Slot(Span Span)
{
    /// <summary>A name or words.</summary>
    public sealed record Named(Phrase Phrase) : Slot(Phrase.Span);

    /// <summary>Several names.</summary>
    public sealed record NamedList(ImmutableArray<Phrase> Phrases, Span Span) : Slot(Span);

    /// <summary>What is said or explained, as written.</summary>
    public sealed record Text(string Value, Span Span) : Slot(Span);

    /// <summary>A number with its unit; <paramref name="Written"/> has one space between them.</summary>
    public sealed record Amount(Quantity Quantity, string Written, Span Span) : Slot(Span);

    public sealed record Count(int Number, Span Span) : Slot(Span);

    /// <summary>The number of a step.</summary>
    public sealed record StepNumber(int Number, Span Span) : Slot(Span);

    /// <summary>A calculation, as written with single spaces.</summary>
    public sealed record Calculation(string Written, Span Span) : Slot(Span);

    public sealed record Seen(ConditionPhrase Condition) : Slot(Condition.Span);

    public sealed record Done(ImmutableArray<Sentence> Sentences, Span Span) : Slot(Span);
}
