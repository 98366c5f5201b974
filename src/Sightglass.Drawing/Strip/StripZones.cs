using System.Collections.Immutable;
using Sightglass.Book.Model;
using Sightglass.Drawing.Shapes;
using Sightglass.Drawing.Walk;

namespace Sightglass.Drawing.Strip;

/// <summary>The ground that hazards cover: round their places, out to the middle between neighbours.</summary>
internal static class StripZones
{
    private const double Reach = 1.4;
    private const double LowSide = 0.3;
    private const double LowEnd = 0.95;

    /// <summary>How far the hatch reaches below the rail, pixels.</summary>
    private const double Below = 17;

    public static ImmutableArray<StripZone> Of(ClassBook book, WalkRoute route, ImmutableArray<StripSide> sides)
    {
        ImmutableArray<StripZone>.Builder zones = ImmutableArray.CreateBuilder<StripZone>();
        foreach (Hazard hazard in book.Hazards.Values.Where(h => h.Caution.Word != SignalWord.Notice).OrderBy(h => h.Caution.Word))
        {
            foreach (StripSide side in sides)
            {
                ImmutableArray<WalkStop> stops = [.. route.Stops.Where(s => s.Side == side.Side && s.Place.OnGround)];
                zones.AddRange(Stretches(hazard, stops).Select(s => Zone(hazard, side, s.From, s.To)));
            }
        }

        return Banded(Merged(zones));
    }

    // What one word says of ground that touches is one zone: between two vehicles lie many hazards.
    private static ImmutableArray<StripZone> Merged(IEnumerable<StripZone> zones)
    {
        List<StripZone> merged = [];
        foreach (StripZone zone in zones.OrderBy(z => z.Box.Left))
        {
            int at = merged.FindIndex(m => m.Side == zone.Side && m.Word == zone.Word && m.Box.DistanceTo(zone.Box) == 0);
            if (at < 0)
            {
                merged.Add(zone);
            }
            else
            {
                merged[at] = merged[at] with { Hazards = [.. merged[at].Hazards.Union(zone.Hazards)], Box = merged[at].Box.Union(zone.Box) };
            }
        }

        return [.. merged];
    }

    // Hazards that share ground share its height: each has a band of its own, the worst on top.
    private static ImmutableArray<StripZone> Banded(ImmutableArray<StripZone> zones) => [.. zones.Select(z =>
    {
        ImmutableArray<StripZone> sharing = [.. Sharing(z, zones).OrderByDescending(s => s.Word).ThenBy(s => s.Box.Left).ThenBy(s => s.Hazards[0].Name, StringComparer.Ordinal)];
        double band = z.Box.Height / sharing.Length;
        double low = z.Box.Low + (sharing.IndexOf(z) * band);
        return z with { Box = z.Box with { Low = low, High = low + band } };
    })];

    private static ImmutableArray<StripZone> Sharing(StripZone zone, ImmutableArray<StripZone> zones)
    {
        List<StripZone> found = [zone];
        for (int i = 0; i < found.Count; i++)
        {
            found.AddRange(zones.Where(z => z.Side == zone.Side && !found.Contains(z) && z.Box.DistanceTo(found[i].Box) == 0).ToList());
        }

        return [.. found];
    }

    private static IEnumerable<(double From, double To)> Stretches(Hazard hazard, ImmutableArray<WalkStop> stops)
    {
        ImmutableArray<WalkStop> sorted = [.. stops.OrderBy(s => s.Along)];
        (double From, double To)? open = null;
        for (int i = 0; i < sorted.Length; i++)
        {
            bool covered = hazard.Places.Contains(sorted[i].Place.Name);
            double from = sorted[i].Along - Math.Min(Reach, i > 0 ? (sorted[i].Along - sorted[i - 1].Along) / 2 : Reach);
            double to = sorted[i].Along + Math.Min(Reach, i + 1 < sorted.Length ? (sorted[i + 1].Along - sorted[i].Along) / 2 : Reach);
            bool joins = covered && i > 0 && hazard.Places.Contains(sorted[i - 1].Place.Name);
            if (open is not null && !joins)
            {
                yield return open.Value;
                open = null;
            }

            if (covered)
            {
                open = joins && open is not null ? (open.Value.From, to) : (from, to);
            }
        }

        if (open is not null)
        {
            yield return open.Value;
        }
    }

    private static StripZone Zone(Hazard hazard, StripSide side, double from, double to)
    {
        bool end = side.Side is Side.Rear or Side.Front;
        double a = side.Map.X(from);
        double b = side.Map.X(to);
        double margin = 0.35 * side.Map.Scale;
        double left = Math.Max(Math.Min(a, b), side.Left - margin);
        double right = Math.Min(Math.Max(a, b), side.Right + margin);
        return new StripZone([hazard], side.Side, new Bounds(left, side.Map.Y(end ? LowEnd : LowSide), right, Below));
    }
}
