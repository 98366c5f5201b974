using Sightglass.Basics.Diagnostics;
using Sightglass.Cards.Names;
using Sightglass.Cards.Sentences;
using Sightglass.Cards.Tree;

namespace Sightglass.Cards.Parsing;

/// <summary>What is known while a card is read: its text, its language, the book's names, the letters and the numbers written down so far.</summary>
internal sealed class CardContext(SourceText source, CardNames names)
{
    public SourceText Source { get; } = source;

    public CardNames Names { get; } = names;

    public CardLanguage Language => Names.Language;

    /// <summary>The letters declared, standing for their first words.</summary>
    public Scope Scope { get; set; } = Scope.Empty;

    /// <summary>
    /// Ways to read a line that are tried at most. A dozen serve an ordinary one; sentences within sentences ask for more with every level, and
    /// no line holds a machine up.
    /// </summary>
    public const int MostTries = 500;

    /// <summary>Ways tried so far in the line that is read.</summary>
    public int Tries { get; set; }

    /// <summary>The names within what a sentence goes through, standing for its first; those of now for a sentence that goes through nothing.</summary>
    public Scope ScopeIn(Sentence sentence) => Rounds.Of(sentence, Names, Scope, []) is { } each ? Scope.InRound(each, each.Domain[0]) : Scope;

    /// <summary>Names given by Read so far.</summary>
    public HashSet<string> Written { get; } = new(StringComparer.Ordinal);
}
