using System.Collections.Immutable;
using Sightglass.Basics.Draws;
using Sightglass.Plant.Plans;

namespace Sightglass.Trials.Causes;

/// <summary>How well looking finds what was put wrong: in cases that the table was not made from, somebody looks where it tells most, names what is likeliest, mends it and looks again.</summary>
public static class CauseTrial
{
    /// <summary>Share of one cause at which nobody looks further.</summary>
    private const double Sure = 0.98;

    private static readonly DrawKey s_key = DrawKey.Of("causes");

    /// <param name="table">What is known.</param>
    /// <param name="cases">How many.</param>
    /// <param name="seed">Settles what is put wrong.</param>
    /// <param name="faults">Things put wrong at once: 1 or 2.</param>
    public static CauseTrialResult Run(CauseTable table, int cases, ulong seed, int faults = 1)
    {
        ArgumentNullException.ThrowIfNull(table);
        using LaneRunner runner = new(table.Plan);
        LookOrder order = new(table);
        List<ImmutableArray<Cause>> left = [.. Enumerable.Range(0, cases).Select(i => Draws(table, seed, (ulong)i, faults))];
        ImmutableArray<Cause>[] planted = [.. left];
        List<ImmutableArray<Cause>> missed = [];
        double looks = 0, metres = 0;
        int[] open = [.. Enumerable.Range(0, cases)];
        int first = 0;
        for (int round = 0; round < faults && open.Length > 0; round++)
        {
            (int[] Seen, bool Holds)[] seen = table.See([.. open.Select(i => left[i])], runner, CauseTable.UsualCases);
            List<int> next = [];
            for (int n = 0; n < open.Length; n++)
            {
                if (seen[n].Holds)
                {
                    continue; // one of two that are wrong only together
                }

                (int[] ranked, int made, double walked) = Find(table, order, seen[n].Seen);
                (looks, metres) = (looks + made, metres + walked);
                ImmutableArray<Cause> mine = left[open[n]];
                int named = ranked.Take(2).Select(c => mine.IndexOf(table.Causes[c])).FirstOrDefault(p => p >= 0, -1);
                if (named < 0)
                {
                    missed.Add(planted[open[n]]);
                    continue;
                }

                first += table.Causes[ranked[0]] == mine[named] ? 1 : 0;
                left[open[n]] = mine.RemoveAt(named);
                if (left[open[n]].Length > 0)
                {
                    next.Add(open[n]);
                }
            }

            open = [.. next];
        }

        return new(cases, faults, first, cases - missed.Count, looks / cases, metres / cases, [.. missed]);
    }

    /// <summary>Looks until it is sure or nothing tells any more.</summary>
    private static (int[] Ranked, int Looks, double Metres) Find(CauseTable table, LookOrder order, int[] seen)
    {
        Belief belief = new(table);
        HashSet<int> done = [];
        int at = table.Begin;
        double metres = 0;
        while (belief.Shares() is var shares && shares.Max() < Sure && order.Next(shares, at, done, out int to) is >= 0 and var look)
        {
            metres += table.Plan.Ways.Seconds(at, to) * WayTable.OrdinaryPace;
            belief.Take(look, seen[look]);
            done.Add(look);
            at = to;
        }

        return (belief.Ranked(), done.Count, metres);
    }

    private static ImmutableArray<Cause> Draws(CauseTable table, ulong seed, ulong number, int faults)
    {
        List<Cause> left = [.. table.Causes];
        ImmutableArray<Cause>.Builder drawn = ImmutableArray.CreateBuilder<Cause>();
        for (int i = 0; i < faults && left.Count > 0; i++)
        {
            double u = Draw.Uniform(seed, number, s_key.At(i)) * left.Sum(c => c.Likelihood);
            int at = 0;
            while (at < left.Count - 1 && u >= left[at].Likelihood)
            {
                u -= left[at++].Likelihood;
            }

            Cause cause = left[at];
            drawn.Add(cause);
            left.RemoveAll(c => c.Item.Name == cause.Item.Name);
        }

        return drawn.ToImmutable();
    }
}
