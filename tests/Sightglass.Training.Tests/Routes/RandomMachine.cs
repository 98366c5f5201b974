using System.Collections.Immutable;
using System.Globalization;
using Sightglass.Basics.Diagnostics;
using Sightglass.Book.Model;
using Sightglass.Plant.Plans;
using Sightglass.Training.Routes;

namespace Sightglass.Training.Tests.Routes;

/// <summary>A few places on random sides of a machine, some inside, some dangerous, and what is to be shown there.</summary>
internal static class RandomMachine
{
    public static ClassBook Book(Random chance, int places)
    {
        ClassBook book = Books.Smallest.Book;
        var named = Enumerable.Range(0, places).Select(i => Place(chance, i, book)).ToImmutableSortedDictionary(p => p.Name, p => p, StringComparer.Ordinal);
        string[] names = [.. named.Keys];
        ImmutableArray<Leg> legs = [.. Enumerable.Range(0, chance.Next(places, 3 * places)).Select(_ => new Leg(names[chance.Next(places)], names[chance.Next(places)], Span.None, chance.Next(2, 60), "steps"))];
        Hazard danger = new("a danger", Span.None, [.. names.Where(_ => chance.Next(6) == 0)], [], null, Span.None, "standing still", new(SignalWord.Warning, "It moves.", Span.None));
        return book with { Places = named, Legs = legs, Hazards = book.Hazards.Clear().Add(danger.Name, danger) };
    }

    public static RouteProblem Problem(Random chance, ClassBook book, int things)
    {
        WayTable ways = new(book);
        int n = ways.Places.Length;
        RouteMap map = new(ways, ways.Places.Where(_ => chance.Next(12) == 0).Select(p => p.Name));
        ImmutableArray<ImmutableArray<int>> wanted = [.. Enumerable.Range(0, things).Select(_ => Enumerable.Range(0, chance.Next(1, 4)).Select(_ => chance.Next(n)).Distinct().ToImmutableArray())];
        ImmutableArray<(int, int)> order = [.. Enumerable.Range(0, chance.Next(3)).Select(_ => (chance.Next(things), chance.Next(things))).Where(o => o.Item1 < o.Item2)];
        return new(map, chance.Next(n), chance.Next(2) == 0 ? chance.Next(n) : null, wanted, order);
    }

    /// <summary>All outside the outline: nothing stands between vehicles.</summary>
    private static Place Place(Random chance, int number, ClassBook book)
    {
        bool ground = chance.Next(3) != 0;
        double side = chance.Next(2) == 0 ? 1 : -1;
        Point3 at = new(chance.Next(0, (int)(10 * book.Length)) / 10.0, side * ((book.Width / 2) + 1), ground ? 0 : 1.5);
        return new(string.Create(CultureInfo.InvariantCulture, $"p{number:00}"), Span.None, at, ground, "");
    }
}
