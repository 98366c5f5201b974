using Sightglass.Basics.Diagnostics;
using Sightglass.Book.Model;
using Sightglass.Cards.Names;
using Sightglass.Cards.Tree;

namespace Sightglass.Cards.Programs;

/// <summary>The cards of a book by their titles, for cards that call others. Nothing is read before the first call.</summary>
internal sealed class CardLibrary(CardNames names)
{
    private readonly Lazy<Dictionary<string, CalledCard>> _cards = new(() => Read(names));

    /// <summary>As written on the cards.</summary>
    public IEnumerable<string> Titles => _cards.Value.Values.Select(c => c.Card.Title);

    /// <summary>The card with a title, whatever its capitals; null where the book has none.</summary>
    public CalledCard? Find(string title) => _cards.Value.GetValueOrDefault(names.Key.Of(title));

    private static Dictionary<string, CalledCard> Read(CardNames names)
    {
        Dictionary<string, CalledCard> cards = new(StringComparer.Ordinal);
        foreach (SourceText text in names.TextsInLanguage.Where(t => !CardReader.IsTooLarge(t)))
        {
            DiagnosticList found = [];
            Card card = CardReader.ReadTree(text, names, found);
            if (card.Title.Length > 0)
            {
                cards.TryAdd(names.Key.Of(card.Title), new(card, found));
            }
        }

        return cards;
    }
}
