using Sightglass.Basics.Diagnostics;
using Sightglass.Book.Model;
using Sightglass.Cli.Books;
using Sightglass.Training.Routes;

namespace Sightglass.Cli.Routes;

/// <summary>What a purpose named on the command line wants shown.</summary>
internal static class PurposeFinder
{
    /// <param name="named">As typed: a walk of the book, all, changes, a system, a card by its title or file.</param>
    /// <param name="book">With the items of the road number and the train, where one is chosen.</param>
    /// <param name="error">Takes what would have been possible.</param>
    /// <returns>The request and the book in whose names it speaks, or null.</returns>
    public static (RouteRequest Request, ClassBook Book)? Find(string named, ClassBook book, TextWriter error)
    {
        if (RoutePurposes.Find(named, book) is { } request)
        {
            return (request, book);
        }

        if (named == RouteRequest.Changes)
        {
            IEnumerable<string> modified = book.RoadNumbers.Values.Where(r => r.IsModified).Select(r => r.Number);
            error.WriteLine($"`changes` shows what differs on a road number: name one that has modifications with --road-number; there are {string.Join(", ", modified)}");
            return null;
        }

        StringWriter said = new();
        if (CardSource.Find(named, book, said) is { } text)
        {
            ClassBook spoken = book.For(text);
            return (RoutePurposes.OfCard(text, spoken), spoken);
        }

        string[] others = [.. RoutePurposes.Of(book)];
        error.WriteLine(Nearest.DidYouMean(named, others.Concat(book.CardNames)) is { } hint
            ? $"There is no purpose `{named}`; {hint}"
            : $"There is no purpose `{named}`: name a walk of the book, a system, a card, `all` or `changes`. There are: {string.Join("; ", others)}.");
        return null;
    }
}
