using System.Collections.Immutable;
using Sightglass.Book.Kinds;
using Sightglass.Book.Model;

namespace Sightglass.Drawing.Walk;

/// <summary>The walk round a machine: ground places in order, each followed by the places inside that are entered from it.</summary>
public sealed record WalkRoute(ImmutableArray<WalkStop> Stops)
{
    /// <summary>Ordinary walking speed, m/s; common practice, no source.</summary>
    public const double OrdinarySpeed = 1.3;

    /// <summary>The route of a book.</summary>
    /// <param name="book">Its places, legs and items.</param>
    /// <param name="speed">Metres a second on the ground.</param>
    public static WalkRoute Of(ClassBook book, double speed = OrdinarySpeed)
    {
        WalkSides sides = new(book);
        List<Place> ground = [.. book.Places.Values.Where(p => p.OnGround)
            .OrderBy(p => sides.Progress(p)).ThenBy(p => p.Name, StringComparer.Ordinal)];
        ImmutableDictionary<string, (string? Entry, double Seconds)> inside = WalkEntries.Find(book, ground);
        List<WalkStop> stops = [];
        for (int i = 0; i < ground.Count; i++)
        {
            double? onward = i + 1 < ground.Count ? sides.Distance(ground[i], ground[i + 1]) / speed : null;
            stops.Add(Stop(book, sides, ground[i], sides.Of(ground[i]), null, onward));
            stops.AddRange(inside.Where(e => e.Value.Entry == ground[i].Name)
                .OrderBy(e => e.Value.Seconds).ThenBy(e => e.Key, StringComparer.Ordinal)
                .Select(e => Inside(book, sides, book.Places[e.Key], ground[i])));
        }

        stops.AddRange(inside.Where(e => e.Value.Entry is null).OrderBy(e => e.Key, StringComparer.Ordinal)
            .Select(e => Inside(book, sides, book.Places[e.Key], null)));
        return new WalkRoute([.. stops]);
    }

    /// <summary>The stop of a place, or null.</summary>
    public WalkStop? Find(string? place) => Stops.FirstOrDefault(s => s.Place.Name == place);

    private static WalkStop Inside(ClassBook book, WalkSides sides, Place place, Place? entry)
    {
        Side side = sides.OfInside(place.Position, entry is null ? book.WalkStart : sides.Of(entry));
        return Stop(book, sides, place, side, entry?.Name, null);
    }

    private static WalkStop Stop(ClassBook book, WalkSides sides, Place place, Side side, string? entry, double? onward)
    {
        IEnumerable<Item> own = book.Items.Values.Where(i => i.Kind.Role != KindRole.Mistake && !i.Places.IsEmpty && i.Places[0] == place.Name);
        ImmutableArray<string> items = [.. own.OrderBy(i => sides.Onward(side, i.Position ?? place.Position)).ThenBy(i => i.Name, StringComparer.Ordinal).Select(i => i.Name)];
        return new WalkStop(place, side, WalkSides.Along(side, place.Position), entry, onward, items);
    }
}
