using Sightglass.Basics.Diagnostics;
using Sightglass.Book.Messages;
using Sightglass.Book.Model;

namespace Sightglass.Book.Checks;

/// <summary>Whether one can walk from every place to every other; ground places are joined along the outline.</summary>
internal static class ReachChecks
{
    public static void Run(ClassBook book, DiagnosticList found)
    {
        if (book.Places.Count == 0)
        {
            return;
        }

        Place start = book.Places.Values.Where(p => p.OnGround).DefaultIfEmpty(book.Places.Values.First()).MinBy(p => p.Span.Start)!;
        HashSet<string> reached = Reach(start, book);
        foreach (Place place in book.Places.Values.Where(p => !reached.Contains(p.Name)))
        {
            found.Add(BookMessages.NotReached(place.Span, place.Name, start.Name));
        }
    }

    private static HashSet<string> Reach(Place start, ClassBook book)
    {
        ILookup<string, string> ways = book.Legs.SelectMany(l => new[] { (l.From, l.To), (From: l.To, To: l.From) }).ToLookup(w => w.From, w => w.To);
        HashSet<string> reached = new(StringComparer.Ordinal) { start.Name };
        Queue<string> next = new(reached);
        while (next.TryDequeue(out string? here))
        {
            bool ground = book.Places.TryGetValue(here, out Place? place) && place.OnGround;
            IEnumerable<string> along = ground ? book.Places.Values.Where(p => p.OnGround).Select(p => p.Name) : [];
            foreach (string there in ways[here].Concat(along).Where(reached.Add))
            {
                next.Enqueue(there);
            }
        }

        return reached;
    }
}
