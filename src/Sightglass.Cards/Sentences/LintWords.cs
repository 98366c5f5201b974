using System.Collections.Immutable;

namespace Sightglass.Cards.Sentences;

/// <summary>Word lists of a language for the lint rules of cards.</summary>
public sealed record LintWords
{
    /// <summary>Rule 4: phrases that turn a sentence round.</summary>
    public ImmutableArray<string> Negative { get; init; } = [];

    /// <summary>Rule 5: words that leave it open whether to do it.</summary>
    public ImmutableArray<string> Modal { get; init; } = [];

    /// <summary>Rule 5: forms of 'be' that, before a word with a participle's ending, say what is done and not who does it.</summary>
    public ImmutableArray<string> Be { get; init; } = [];

    /// <summary>Rule 5: endings of participles.</summary>
    public ImmutableArray<string> ParticipleEndings { get; init; } = [];

    /// <summary>Rule 10: words that stand where a number belongs.</summary>
    public ImmutableArray<string> Vague { get; init; } = [];

    /// <summary>Rule 9: words that say what a hazard does to a person.</summary>
    public ImmutableArray<string> Harm { get; init; } = [];

    /// <summary>Rule 9: words with which a sentence says how to avoid it.</summary>
    public ImmutableArray<string> Avoid { get; init; } = [];

    /// <summary>Rule 8: verbs that are allowed in a notice (keep, wear, stay).</summary>
    public ImmutableArray<string> NoticeVerbs { get; init; } = [];

    /// <summary>Rule 12: words for people that name nobody.</summary>
    public ImmutableArray<string> Somebody { get; init; } = [];

    /// <summary>Rule 14: words that ask for a repetition without saying how often.</summary>
    public ImmutableArray<string> Again { get; init; } = [];

    /// <summary>Rule 18: words that leave an order open without saying so in the form for it.</summary>
    public ImmutableArray<string> AnyOrder { get; init; } = [];

    /// <summary>Rule 16: words between alternatives.</summary>
    public ImmutableArray<string> Either { get; init; } = [];

    /// <summary>Rule 6: words that a sentence of a step has at most.</summary>
    public required int MostInStep { get; init; }

    /// <summary>Rule 6: words that a sentence of a notice has at most.</summary>
    public required int MostInNotice { get; init; }

    /// <summary>Rule 6: the little words that end a row of nouns (of, in, to).</summary>
    public ImmutableArray<string> NotNouns { get; init; } = [];
}
