using System.Collections.Immutable;

namespace Sightglass.Drawing.Labels;

/// <summary>
/// Puts flags on poles in few tiers: no two flags of one tier closer than <see cref="Gap"/>, no flag over another's pole.
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

    private readonly IReadOnlyList<FlagRequest> _requests;
    private readonly bool _centre;

    /// <param name="requests">All flags that may be placed.</param>
    /// <param name="centre">Whether flags may sit in the middle of their pole, and then like to.</param>
    public FlagPlacer(IReadOnlyList<FlagRequest> requests, bool centre = false) => (_requests, _centre) = (requests, centre);

    /// <summary>One place for each request, in the same order. The same requests always give the same places.</summary>
    public static ImmutableArray<FlagPlace> Place(IReadOnlyList<FlagRequest> requests, bool centre = false)
    {
        Dictionary<int, FlagPlace> placed = new FlagPlacer(requests, centre).Place(Enumerable.Range(0, requests.Count));
        return [.. Enumerable.Range(0, requests.Count).Select(i => placed[i])];
    }

    /// <summary>Places for some of the requests, by their index.</summary>
    public Dictionary<int, FlagPlace> Place(IEnumerable<int> members)
    {
        int[] order = [.. members.OrderBy(i => _requests[i].X).ThenBy(i => i)];
        double[] poles = PoleSpread.Spread([.. order.Select(i => _requests[i].X)], PoleSpacing);
        Dictionary<int, FlagPlace> placed = new(order.Length);
        foreach ((int start, int end) in Clusters(order, poles))
        {
            ImmutableArray<FlagPlace> places = FlagMemo.Place([.. order[start..end].Select(i => _requests[i])], poles[start..end], _centre);
            for (int k = start; k < end; k++)
            {
                placed[order[k]] = places[k - start];
            }
        }

        return placed;
    }

    /// <summary>Stretches of flags that could touch each other, whichever way they fly.</summary>
    private IEnumerable<(int Start, int End)> Clusters(int[] order, double[] poles)
    {
        // How far to the left any flag from here on could reach.
        double[] back = new double[order.Length + 1];
        back[^1] = double.PositiveInfinity;
        for (int k = order.Length - 1; k >= 0; k--)
        {
            back[k] = Math.Min(back[k + 1], poles[k] - _requests[order[k]].Width - Gap);
        }

        int start = 0;
        double reach = double.NegativeInfinity;
        for (int k = 0; k < order.Length; k++)
        {
            if (k > start && back[k] > reach)
            {
                yield return (start, k);
                start = k;
            }

            reach = Math.Max(reach, poles[k] + _requests[order[k]].Width + Gap);
        }

        if (order.Length > start)
        {
            yield return (start, order.Length);
        }
    }
}
