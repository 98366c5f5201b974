using System.Collections.Immutable;
using Sightglass.Basics.Diagnostics;
using Sightglass.Cards.Sentences;
using Sightglass.Cards.Tree;

namespace Sightglass.Cards.Names;

/// <summary>A letter of a card: <c>Let C be the compartment …</c>.</summary>
/// <param name="Name">As written.</param>
/// <param name="Noun">What it is one of.</param>
/// <param name="Domain">The words it may stand for, in order.</param>
/// <param name="Condition">What must be seen for a word, or null when the caller decides.</param>
public sealed record Letter(string Name, Phrase Noun, ImmutableArray<string> Domain, ConditionPhrase? Condition, Span Span)
{
    /// <summary>Words a letter may stand for; of more, one more is kept, so that it is seen.</summary>
    public const int MostWords = 24;

    /// <summary>Whether it is no letter but what a <c>For each</c> goes through: it is said by its noun, and capitals do not matter.</summary>
    public bool IsRound { get; init; }

    /// <summary>The letter that a Let sentence makes, or null for any other sentence or a broken one.</summary>
    public static Letter? Of(Sentence sentence)
    {
        ArgumentNullException.ThrowIfNull(sentence);
        if (sentence.Operation is not (Operation.LetWhere or Operation.LetWhose or Operation.LetOneOf))
        {
            return null;
        }

        Phrase? name = sentence.PhraseAt("letter");
        Phrase? noun = sentence.PhraseAt("noun");
        ImmutableArray<string> domain = [.. sentence.PhrasesAt("domain").Select(p => p.Text).Take(MostWords + 1)];
        return name is null || noun is null || domain.IsEmpty ? null : new(name.Text, noun, domain, sentence.ConditionAt("condition"), sentence.Span);
    }
}
