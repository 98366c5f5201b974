using Sightglass.Basics.Diagnostics;
using Sightglass.Book.Model;

namespace Sightglass.Book.Language;

/// <summary>What stands over the cards of a book and over their translations. A card begins with its title behind a colon, in whatever language; comments may stand before.</summary>
internal static class CardTitles
{
    /// <summary>Titles of the book's cards with those of the same cards in another language.</summary>
    public static IEnumerable<BookWord> Of(ClassBook book, IEnumerable<SourceText> cards)
    {
        ILookup<string, SourceText> translated = cards.ToLookup(c => Path.GetFileNameWithoutExtension(c.Path), StringComparer.Ordinal);
        foreach (SourceText card in book.CardTexts)
        {
            if (translated[Path.GetFileNameWithoutExtension(card.Path)].FirstOrDefault() is { } other && Title(card) is { Length: > 0 } text && Title(other) is { Length: > 0 } says)
            {
                yield return new(text, says, other.Between(0, 0));
            }
        }
    }

    private static string Title(SourceText card)
    {
        string line = card.Text.Split('\n').Select(l => l.Trim()).FirstOrDefault(l => l.Length > 0 && l[0] != '#') ?? "";
        return line.IndexOf(':', StringComparison.Ordinal) is >= 0 and var colon ? line[(colon + 1)..].Trim() : "";
    }
}
