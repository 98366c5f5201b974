using System.Collections.Immutable;
using Sightglass.Basics.Diagnostics;
using Sightglass.Cards.Sentences;

namespace Sightglass.Cards.Tree;

/// <summary>A card as a tree that has lost nothing of its text. Rewritten, never changed.</summary>
public sealed record Card(SourceText Source, CardLanguage Language, ImmutableArray<CardElement> Elements)
{
    /// <summary>Whether reading found an error: such a card can be printed but not compiled.</summary>
    public bool HasErrors { get; init; }

    /// <summary>
    /// Sentences of steps that a misstep leaves out and whose names other steps use: a number that was never read is not a number, and
    /// no comparison with it holds.
    /// </summary>
    public ImmutableArray<Sentence> Forgotten { get; init; } = [];

    /// <summary>The title, or an empty text.</summary>
    public string Title => Head(Operation.Card)?.TextAt("title")?.Value ?? "";

    public IEnumerable<CardElement.Step> Steps => Elements.OfType<CardElement.Step>();

    /// <summary>All sentences of the head lines.</summary>
    public IEnumerable<Sentence> HeadSentences => Elements.OfType<CardElement.Head>().SelectMany(h => h.Sentences).SelectMany(s => s.Tails.Prepend(s));

    /// <summary>The first head sentence of an operation.</summary>
    public Sentence? Head(Operation operation) => HeadSentences.FirstOrDefault(s => s.Operation == operation);

    /// <summary>The list under a step.</summary>
    public ImmutableArray<CardElement.ListItem> ListUnder(CardElement.Step step)
    {
        int at = Elements.IndexOf(step);
        return at < 0 ? [] :
        [
            .. Elements.Skip(at + 1)
                .TakeWhile(e => e is CardElement.ListItem or CardElement.Comment or CardElement.Blank)
                .OfType<CardElement.ListItem>(),
        ];
    }
}
