using System.Collections.Immutable;
using Sightglass.Book.Model;

namespace Sightglass.Drawing.Walk;

/// <summary>From which ground place each place inside is reached soonest.</summary>
internal static class WalkEntries
{
    /// <summary>For every place that is not on the ground: its entry, or null, and the seconds by legs.</summary>
    public static ImmutableDictionary<string, (string? Entry, double Seconds)> Find(ClassBook book, IReadOnlyList<Place> ground)
    {
        Dictionary<string, (string Entry, double Seconds)> best = ground.ToDictionary(p => p.Name, p => (p.Name, 0.0), StringComparer.Ordinal);
        PriorityQueue<string, (double Seconds, int Rank)> open = new();
        for (int i = 0; i < ground.Count; i++)
        {
            open.Enqueue(ground[i].Name, (0, i));
        }

        HashSet<string> done = [];
        while (open.TryDequeue(out string? here, out (double Seconds, int Rank) at))
        {
            if (!done.Add(here))
            {
                continue;
            }

            foreach (Leg leg in book.Legs.Where(l => l.From == here || l.To == here))
            {
                string next = leg.From == here ? leg.To : leg.From;
                double seconds = at.Seconds + leg.Seconds;
                if (book.Places.TryGetValue(next, out Place? place) && !place.OnGround && (!best.TryGetValue(next, out (string Entry, double Seconds) known) || seconds < known.Seconds))
                {
                    best[next] = (best[here].Entry, seconds);
                    open.Enqueue(next, (seconds, at.Rank));
                }
            }
        }

        return book.Places.Values.Where(p => !p.OnGround).ToImmutableDictionary(
            p => p.Name,
            p => best.TryGetValue(p.Name, out (string Entry, double Seconds) found) ? ((string?)found.Entry, found.Seconds) : (null, 0));
    }
}
