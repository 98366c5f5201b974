using System.Collections.Immutable;
using Sightglass.Basics.Diagnostics;
using Sightglass.Book.Model;
using Sightglass.Cards;
using Sightglass.Cards.Programs;
using Sightglass.Cards.Tree;
using Sightglass.Cli.Books;
using Sightglass.Training.Routes;

namespace Sightglass.Cli.Routes;

/// <summary>What a purpose named on the command line wants shown: a walk of the book, everything, what differs, a system, a card.</summary>
internal static class PurposeFinder
{
    /// <param name="named">As typed.</param>
    /// <param name="book">With the items of the road number and the train, where one is chosen.</param>
    /// <param name="error">Takes what would have been possible.</param>
    /// <returns>The request and the book in whose names it speaks, or null.</returns>
    public static (RouteRequest Request, ClassBook Book)? Find(string named, ClassBook book, TextWriter error)
    {
        if (book.Walks.TryGetValue(named, out PlannedWalk? walk))
        {
            return (RouteRequest.Of(book, walk, name => ItemsOf(book.CardTexts.First(t => Path.GetFileNameWithoutExtension(t.Path) == name), book).Select(i => i.Name)), book);
        }

        if (named == RouteRequest.Whole)
        {
            return (RouteRequest.OfWhole(book), book);
        }

        if (named == RouteRequest.Changes)
        {
            return Changes(book, error);
        }

        if (book.Systems.ContainsKey(named))
        {
            return (RouteRequest.OfSystem(book, named), book);
        }

        return OfCard(named, book, error);
    }

    private static (RouteRequest, ClassBook)? Changes(ClassBook book, TextWriter error)
    {
        if (book.RoadNumberInUse is { } number && book.RoadNumbers[number].IsModified)
        {
            return (RouteRequest.OfChanges(book.RoadNumbers[number]), book);
        }

        IEnumerable<string> modified = book.RoadNumbers.Values.Where(r => r.IsModified).Select(r => r.Number);
        error.WriteLine($"`changes` shows what differs on a road number: name one that has modifications with --road-number; there are {string.Join(", ", modified)}");
        return null;
    }

    private static (RouteRequest, ClassBook)? OfCard(string named, ClassBook book, TextWriter error)
    {
        StringWriter said = new();
        if (CardSource.Find(named, book, said) is { } text)
        {
            ClassBook spoken = book.For(text);
            string title = CardReader.Read(text, spoken, [])?.Title ?? named;
            return (new RouteRequest($"the card '{title}'", [.. ItemsOf(text, spoken).Select(i => i.Name)]), spoken);
        }

        IEnumerable<string> others = book.Walks.Keys.Concat(book.Systems.Keys).Append(RouteRequest.Whole).Append(RouteRequest.Changes);
        error.WriteLine(Nearest.DidYouMean(named, others.Concat(book.CardNames)) is { } hint
            ? $"There is no purpose `{named}`; {hint}"
            : $"There is no purpose `{named}`: name a walk of the book, a system, a card, or one of all, changes. There are: {string.Join("; ", others)}.");
        return null;
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
