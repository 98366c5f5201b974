using System.Collections.Immutable;
using Sightglass.Basics.Language;
using Sightglass.Book.Model;
using Sightglass.Cards.Names;
using Sightglass.Cards.Sentences;
using Sightglass.Cards.Tree;

namespace Sightglass.Cards;

/// <summary>What a card needs: tools and the like.</summary>
/// <param name="Title">Of the card.</param>
/// <param name="Needs">As its head says it.</param>
public sealed record CardNeeds(string Title, ImmutableArray<string> Needs)
{
    /// <summary>The cards of a book that need something, in the order of their files. Their heads are read, none of their names is looked for.</summary>
    public static ImmutableArray<CardNeeds> Of(ClassBook book)
    {
        ArgumentNullException.ThrowIfNull(book);
        CardNames names = new(book, EnglishForms.Language);
        return
        [
            .. book.CardTexts.Where(t => !CardReader.IsTooLarge(t) && (CardLanguages.Of(t) ?? EnglishForms.Language).Code == Tongue.English.Code)
                .Select(t => CardReader.ReadTree(t, names, []))
                .Where(c => c.Head(Operation.Card) is not null && c.Head(Operation.Needs) is not null)
                .Select(c => new CardNeeds(c.Title, [.. (c.Head(Operation.Needs)?.PhrasesAt("needs") ?? []).Select(p => p.Text)])),
        ];
    }
}
