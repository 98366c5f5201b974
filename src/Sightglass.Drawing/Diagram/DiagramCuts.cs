using System.Collections.Immutable;

namespace Sightglass.Drawing.Diagram;

/// <summary>Where a drawing is cut along one of its axes, so that as little as possible is cut through, and in stretches as even as that allows.</summary>
internal static class DiagramCuts
{
    /// <summary>No stretch is shorter than this share of the longest, unless it is the last.</summary>
    private const double Least = 0.6;

    /// <summary>Lengths that are tried for even stretches.</summary>
    private const int Tries = 20;

    /// <summary>The stretches, one after the other; what is cut through by the end of one is whole in the next, so that they may overlap.</summary>
    /// <param name="parts">What is to be whole in a stretch, where it is no longer than one.</param>
    /// <param name="from">Where the drawing begins.</param>
    /// <param name="to">Where it ends.</param>
    /// <param name="longest">Of a stretch.</param>
    public static ImmutableArray<(double From, double To)> Of(IEnumerable<(double From, double To)> parts, double from, double to, double longest)
    {
        (double From, double To)[] whole = [.. parts.Where(p => p.To - p.From <= longest)];
        ImmutableArray<(double, double)> fewest = Cut(whole, from, to, longest);
        double least = whole.Select(p => p.To - p.From).Append((to - from) / fewest.Length).Max();
        return Enumerable.Range(0, Tries).Select(i => Cut(whole, from, to, least + ((longest - least) * i / Tries))).Append(fewest).First(c => c.Length == fewest.Length);
    }

    private static ImmutableArray<(double From, double To)> Cut((double From, double To)[] whole, double from, double to, double longest)
    {
        ImmutableArray<(double, double)>.Builder stretches = ImmutableArray.CreateBuilder<(double, double)>();
        while (to - from > longest)
        {
            double end = End(whole, from, longest);
            stretches.Add((from, end));
            double next = whole.Where(p => p.From < end && end < p.To).Select(p => p.From).DefaultIfEmpty(end).Min();
            from = next > from ? next : end;
        }

        stretches.Add((from, to));
        return stretches.ToImmutable();
    }

    /// <summary>Where it cuts through the least, and of such places the furthest.</summary>
    private static double End((double From, double To)[] whole, double from, double longest)
    {
        double furthest = from + longest;
        double owed = whole.Where(p => p.From <= from && p.To <= furthest).Select(p => p.To).DefaultIfEmpty(from).Max(); // what the stretch before cut through
        return whole.SelectMany(p => new[] { p.From, p.To }).Append(furthest)
            .Where(x => x >= Math.Max(owed, from + (Least * longest)) && x <= furthest)
            .OrderBy(x => whole.Count(p => p.From < x && x < p.To)).ThenByDescending(x => x).First();
    }
}
