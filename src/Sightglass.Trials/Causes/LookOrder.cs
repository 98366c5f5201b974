using System.Collections.Immutable;

namespace Sightglass.Trials.Causes;

/// <summary>
/// Where to look next: what tells most about the cause for each second of walking and looking. Source: greedy choice by entropy over cost, as is common in sequential testing (from memory); the shortest order of all is
/// not looked for.
/// </summary>
internal sealed class LookOrder(CauseTable table)
{
    /// <summary>Seconds to look at one thing.</summary>
    private static readonly double s_look = new World.HumanTimes().Look;

    /// <summary>Bits below which a look is not worth the way.</summary>
    private const double LeastBits = 0.02;

    /// <summary>What each look mostly shows with each cause.</summary>
    private readonly int[][] _mostly = [.. Enumerable.Range(0, table.Looks.Length).Select(l => Enumerable.Range(0, table.Causes.Length).Select(c => table.MostlyOf(c, l)).ToArray())];

    /// <summary>The best look from a place; −1 where none tells anything any more.</summary>
    /// <param name="shares">How likely each cause is.</param>
    /// <param name="at">Number of the place.</param>
    /// <param name="done">Looks that were made.</param>
    /// <param name="to">The place to go to.</param>
    public int Next(double[] shares, int at, HashSet<int> done, out int to)
    {
        (int best, double most) = (-1, 0);
        to = at;
        for (int look = 0; look < table.Looks.Length; look++)
        {
            if (done.Contains(look) || Bits(shares, _mostly[look]) is not (> LeastBits and var bits))
            {
                continue;
            }

            (int place, double seconds) = Nearest(at, table.Looks[look].Places);
            double worth = bits / (seconds + s_look);
            if (worth > most)
            {
                (best, most, to) = (look, worth, place);
            }
        }

        return best;
    }

    /// <summary>Seconds to the nearest place from which something is seen.</summary>
    public (int Place, double Seconds) Nearest(int at, ImmutableArray<int> places) => places.Select(p => (p, table.Plan.Ways.Seconds(at, p))).MinBy(p => p.Item2);

    /// <summary>Causes that a look at what is as usual rules out.</summary>
    public IEnumerable<int> ToldBy(int look) => Enumerable.Range(0, table.Causes.Length).Where(c => _mostly[look][c] != 0);

    /// <summary>What a look tells on the whole: the entropy of what it shows.</summary>
    private static double Bits(double[] shares, int[] mostly)
    {
        Span<double> parts = stackalloc double[CauseTable.Outcomes];
        for (int c = 0; c < shares.Length; c++)
        {
            parts[mostly[c] + 1] += shares[c];
        }

        double bits = 0;
        foreach (double part in parts)
        {
            bits -= part > 0 ? part * Math.Log2(part) : 0;
        }

        return bits;
    }
}
