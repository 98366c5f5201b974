using System.Collections.Immutable;
using Sightglass.Basics.Diagnostics;

namespace Sightglass.Cards.Tree;

/// <summary>Conditions or facts as a card words them.</summary>
public abstract record ConditionPhrase(Span Span)
{
    /// <summary>One sentence such as <c>the aft sight glass shows low</c>.</summary>
    public sealed record One(Sentence Sentence) : ConditionPhrase(Sentence.Span);

    /// <summary>Joined by 'and'.</summary>
    public sealed record All(ImmutableArray<ConditionPhrase> Parts, Span Span) : ConditionPhrase(Span);

    /// <summary>Joined by 'or'.</summary>
    public sealed record Any(ImmutableArray<ConditionPhrase> Parts, Span Span) : ConditionPhrase(Span);

    /// <summary>Separated by semicolons: each of the list.</summary>
    public sealed record Several(ImmutableArray<ConditionPhrase> Parts, Span Span) : ConditionPhrase(Span);

    /// <summary>The sentences in it.</summary>
    public IEnumerable<Sentence> Sentences() => this switch
    {
        One one => [one.Sentence],
        All all => all.Parts.SelectMany(p => p.Sentences()),
        Any any => any.Parts.SelectMany(p => p.Sentences()),
        Several several => several.Parts.SelectMany(p => p.Sentences()),
        _ => [],
    };
}
