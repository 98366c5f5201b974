using System.Collections.Immutable;

namespace Sightglass.Drawing.Labels;

/// <summary>
/// Puts flags on poles in the fewest tiers: no two flags of one tier closer than <see cref="Gap"/>, no flag over another's pole.
/// A flag that covers a pole must stand farther from the machine than that pole's own flag; with all flags flying one way this always
/// has an answer, and a search over the directions makes it low.
/// </summary>
public sealed class FlagPlacer
{
    /// <summary>Least distance between two flags of a tier, pixels.</summary>
    public const double Gap = 8;

    /// <summary>Least distance between a flag and another's pole, pixels.</summary>
    public const double Clearance = 5;

    /// <summary>Least distance between two poles, pixels.</summary>
    public const double PoleSpacing = 9;

    private readonly bool _centre;

    /// <param name="centre">Whether flags may sit in the middle of their pole, and then like to.</param>
    public FlagPlacer(bool centre = false) => _centre = centre;

    /// <summary>One place for each request, in the same order. The same requests always give the same places.</summary>
    public ImmutableArray<FlagPlace> Place(IReadOnlyList<FlagRequest> requests)
    {
        int[] order = [.. Enumerable.Range(0, requests.Count).OrderBy(i => requests[i].X).ThenBy(i => i)];
        double[] poles = PoleSpread.Spread([.. order.Select(i => requests[i].X)], PoleSpacing);
        FlagPlace[] placed = new FlagPlace[requests.Count];
        int start = 0;
        double reach = double.NegativeInfinity;
        for (int k = 0; k <= order.Length; k++)
        {
            double left = k < order.Length ? poles[k] - requests[order[k]].Width - Gap : double.PositiveInfinity;
            if (k > start && left > reach)
            {
                PlaceCluster(requests, order, poles, start, k, placed);
                start = k;
            }

            if (k < order.Length)
            {
                reach = Math.Max(reach, poles[k] + requests[order[k]].Width + Gap);
            }
        }

        return [.. placed];
    }

    private void PlaceCluster(IReadOnlyList<FlagRequest> requests, int[] order, double[] poles, int start, int end, FlagPlace[] placed)
    {
        FlagCluster cluster = new([.. order[start..end].Select(i => requests[i])], poles[start..end], _centre);
        FlagDirection[] directions = cluster.Search();
        int[] tiers = cluster.Tiers(directions)!;
        for (int k = 0; k < directions.Length; k++)
        {
            (double left, double right) = cluster.Extent(k, directions[k]);
            placed[order[start + k]] = new FlagPlace(poles[start + k], left, right, tiers[k], directions[k]);
        }
    }
}
