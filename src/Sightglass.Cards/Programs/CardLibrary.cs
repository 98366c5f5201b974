using Sightglass.Basics.Diagnostics;
using Sightglass.Cards.Names;
using Sightglass.Cards.Tree;

namespace Sightglass.Cards.Programs;

/// <summary>The cards of a book by their titles, for cards that call others. Nothing is read before the first call, and then only what is called.</summary>
internal sealed class CardLibrary(CardNames names)
{
    private readonly Lazy<Dictionary<string, (string Title, Lazy<CalledCard> Card)>> _cards = new(() => Shelve(names));

    /// <summary>As written on the cards.</summary>
    public IEnumerable<string> Titles => _cards.Value.Values.Select(c => c.Title);

    /// <summary>The card with a title, whatever its capitals; null where the book has none.</summary>
    public CalledCard? Find(string title) => _cards.Value.TryGetValue(names.Key.Of(title), out (string, Lazy<CalledCard> Card) found) ? found.Card.Value : null;

    private static Dictionary<string, (string Title, Lazy<CalledCard> Card)> Shelve(CardNames names)
    {
        Dictionary<string, (string, Lazy<CalledCard>)> cards = new(StringComparer.Ordinal);
        foreach (SourceText text in names.TextsInLanguage.Where(t => !CardReader.IsTooLarge(t)))
        {
            if (CardReader.TitleOf(text, names) is { Length: > 0 } title)
            {
                cards.TryAdd(names.Key.Of(title), (title, new(() => Read(text, names))));
            }
        }

        return cards;
    }

    private static CalledCard Read(SourceText text, CardNames names)
    {
        DiagnosticList found = [];
        Card card = CardReader.ReadTree(text, names, found);
        return new(card, found);
    }
}
