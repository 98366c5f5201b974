using System.Collections.Immutable;
using Sightglass.Basics.Diagnostics;
using Sightglass.Book.Messages;
using Sightglass.Book.Model;
using Sightglass.Book.Walking;

namespace Sightglass.Book.Checks;

/// <summary>Whether one can walk from every place to every other.</summary>
internal static class ReachChecks
{
    public static void Run(ClassBook book, DiagnosticList found)
    {
        if (book.Places.Count == 0)
        {
            return;
        }

        ImmutableArray<Place> places = [.. book.Places.Values];
        GroundWays ground = new(book, places);
        Place start = ground.Ring.Select(i => places[i]).DefaultIfEmpty(places[0]).MinBy(p => p.Span.Start)!;
        HashSet<string> reached = Reach(start, book, places, ground);
        foreach (Place place in book.Places.Values.Where(p => !reached.Contains(p.Name)))
        {
            found.Add(BookMessages.NotReached(place.Span, place.Name, start.Name));
        }
    }

    private static HashSet<string> Reach(Place start, ClassBook book, ImmutableArray<Place> places, GroundWays ground)
    {
        HashSet<string> dead = [.. ground.Within.Select(i => places[i].Name)];
        IEnumerable<(string A, string B)> joints = [.. book.Legs.Select(l => (l.From, l.To)), .. ground.Joints.Select(j => (places[j.From].Name, places[j.To].Name))];
        ILookup<string, string> ways = joints.SelectMany(j => new[] { j, (j.B, j.A) }).Where(w => !dead.Contains(w.Item1)).ToLookup(w => w.Item1, w => w.Item2);
        HashSet<string> reached = new(StringComparer.Ordinal) { start.Name };
        Queue<string> next = new(reached);
        while (next.TryDequeue(out string? here))
        {
            foreach (string there in ways[here].Where(reached.Add))
            {
                next.Enqueue(there);
            }
        }

        return reached;
    }
}
