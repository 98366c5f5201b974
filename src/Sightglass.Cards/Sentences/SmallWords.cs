using System.Collections.Immutable;

namespace Sightglass.Cards.Sentences;

/// <summary>The little words of a language that join, mark and leave out.</summary>
public sealed record SmallWords
{
    /// <summary>Words that names ignore: the, a, an.</summary>
    public required ImmutableArray<string> Articles { get; init; }

    /// <summary>The article put before a name when a run is told.</summary>
    public required string Article { get; init; }

    /// <summary>Where the article depends on the name: endings of its first word with the article, the first that fits; a whole word with a space before it.</summary>
    public ImmutableArray<(string Ending, string Article)> ArticlesByEnding { get; init; } = [];

    /// <summary>How a word ends that agrees with a noun of an article; none where words agree with nothing.</summary>
    public ImmutableArray<(string Article, string Ending)> Agreeing { get; init; } = [];

    /// <summary>Words that are two written as one (<c>del</c>: <c>de el</c>).</summary>
    public ImmutableArray<Contraction> Contractions { get; init; } = [];

    /// <summary>Whether a word that tells one thing from another stands behind the noun: <c>compartimento delantero</c>, not <c>forward compartment</c>.</summary>
    public bool IsNounFirst { get; init; }

    public required string And { get; init; }

    public required string Or { get; init; }

    /// <summary>A preposition that a step repeats before each role but the first: <c>avise al maquinista y a la mesa</c>; empty where it is said once.</summary>
    public string BeforeEachRole { get; init; } = "";

    /// <summary>Words by which a second action is hung on: and then, then.</summary>
    public required ImmutableArray<string> Then { get; init; }

    /// <summary>Words that open a condition: if, when.</summary>
    public required ImmutableArray<string> If { get; init; }

    /// <summary>Verb parts of a sign's name that 'Look for' may leave out: is seen, is heard.</summary>
    public required ImmutableArray<string> SignVerbs { get; init; }

    /// <summary>What is said when a card stops and no text is given; <c>{title}</c> and <c>{step}</c> are filled in.</summary>
    public required string StoppedText { get; init; }

    /// <summary>The person of the story: You.</summary>
    public required string You { get; init; }

    /// <summary>The word that stands for no role: nobody.</summary>
    public required string Nobody { get; init; }

    /// <summary>Words after a comma in a name that are told as a side: right, left.</summary>
    public required ImmutableArray<string> Sides { get; init; }

    /// <summary>Words for the one with which <c>For each</c> begins where no other is named.</summary>
    public ImmutableArray<string> First { get; init; } = [];

    /// <summary>Words for the one with which it ends.</summary>
    public ImmutableArray<string> Last { get; init; } = [];

    /// <summary>Denies a whole condition; <c>{0}</c> is the condition.</summary>
    public required string NotSo { get; init; }

    /// <summary>Adds what an instrument showed; <c>{0}</c> is the reading.</summary>
    public required string Showed { get; init; }

    /// <summary>What was heard, or not, of somebody who was asked to do something and has not done it; of one without words, its name.</summary>
    public ImmutableDictionary<Reply, string> Replies { get; init; } = ImmutableDictionary<Reply, string>.Empty;

    /// <summary>With what a line begins that is not printed on the card.</summary>
    public string Comment { get; init; } = "#";
}
