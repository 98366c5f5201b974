using System.Collections.Immutable;
using Sightglass.Basics.Diagnostics;
using Sightglass.Book.Model;
using Sightglass.Cards;
using Sightglass.Cards.Programs;
using Sightglass.Cards.Tree;

namespace Sightglass.Training.Routes;

/// <summary>What can be shown of a book: its walks, everything, a system, what differs on a road number, what a card has to do with.</summary>
public static class RoutePurposes
{
    /// <summary>The names of all but cards, walks first; what differs only where something does.</summary>
    public static IEnumerable<string> Of(ClassBook book)
    {
        ArgumentNullException.ThrowIfNull(book);
        bool differs = book.RoadNumberInUse is { } number && book.RoadNumbers[number].IsModified;
        return [.. book.Walks.Values.OrderBy(w => w.Span).Select(w => w.Name), RouteRequest.Whole, .. differs ? [RouteRequest.Changes] : Array.Empty<string>(), .. book.Systems.Values.OrderBy(s => s.Span).Select(s => s.Name)];
    }

    /// <summary>The request of a purpose that is no card; null where the book has none of that name.</summary>
    public static RouteRequest? Find(string named, ClassBook book)
    {
        ArgumentNullException.ThrowIfNull(book);
        if (book.Walks.TryGetValue(named, out PlannedWalk? walk))
        {
            return RouteRequest.Of(book, walk, name => ItemsOf(book.CardTexts.First(t => Path.GetFileNameWithoutExtension(t.Path) == name), book).Select(i => i.Name));
        }

        return !Of(book).Contains(named, StringComparer.Ordinal) ? null
            : named == RouteRequest.Whole ? RouteRequest.OfWhole(book)
            : named == RouteRequest.Changes ? RouteRequest.OfChanges(book)
            : RouteRequest.OfSystem(book, named);
    }

    /// <summary>The request of a card.</summary>
    /// <param name="text">One of the book's, or another one in its names.</param>
    /// <param name="book">In whose names it speaks.</param>
    public static RouteRequest OfCard(SourceText text, ClassBook book)
    {
        string title = CardReader.Read(text, book, [])?.Title ?? text.Path;
        return RouteRequest.Of($"the card '{title}'", [.. ItemsOf(text, book).Select(i => i.Name)]);
    }

    private static ImmutableArray<Item> ItemsOf(SourceText text, ClassBook book)
    {
        if (CardReader.Read(text, book, []) is not { HasErrors: false } card)
        {
            return [];
        }

        ImmutableArray<BindingCase> cases = CardCompiler.Bindings(card, book);
        IEnumerable<string?> words = cases.IsEmpty ? [null] : cases.Select(c => (string?)c.Word);
        return [.. words.Select(w => CardCompiler.TryCompile(card, book, w, [])).OfType<CardProgram>().SelectMany(CardItems.Of).DistinctBy(i => i.Name)];
    }
}
