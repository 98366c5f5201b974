using System.Collections.Immutable;
using Sightglass.Plant.Plans;

namespace Sightglass.Trials.Causes;

/// <summary>The best order of looks from where somebody stands, for as long as each shows the usual.</summary>
public static class LookWalk
{
    /// <param name="table">What is known.</param>
    /// <param name="belief">What was seen already; it takes in what is walked.</param>
    /// <param name="at">Number of the place where somebody stands; where the search begins while absent.</param>
    /// <param name="seen">Numbers of the looks that were made.</param>
    public static ImmutableArray<LookStep> Of(CauseTable table, Belief belief, int? at = null, IEnumerable<int>? seen = null)
    {
        ArgumentNullException.ThrowIfNull(table);
        ArgumentNullException.ThrowIfNull(belief);
        LookOrder order = new(table);
        ImmutableArray<LookStep>.Builder steps = ImmutableArray.CreateBuilder<LookStep>();
        HashSet<int> done = [.. seen ?? []];
        int here = at ?? table.Begin;
        while (order.Next(belief.Shares(), here, done, out int to) is >= 0 and var look)
        {
            double[] shares = belief.Shares();
            int[] told = [.. order.ToldBy(look).Where(c => shares[c] > 0.001).OrderByDescending(c => shares[c])];
            steps.Add(new(look, table.Looks[look], table.Plan.Ways.Places[to].Name, table.Plan.Ways.Seconds(here, to) * WayTable.OrdinaryPace, [.. told.Select(c => table.Causes[c])], told.Sum(c => shares[c])));
            belief.Take(look, 0);
            done.Add(look);
            here = to;
        }

        return steps.ToImmutable();
    }
}
