using System.Collections.Immutable;

namespace Sightglass.Training.Routes;

/// <summary>What a walk must come by. Places are numbers of the map.</summary>
/// <param name="Map">Where one can walk.</param>
/// <param name="Start">Where it begins.</param>
/// <param name="End">Where it ends, or null where any last stop will do.</param>
/// <param name="Wanted">For each thing to be shown the places from which it can be; one of them is enough.</param>
/// <param name="Order">Pairs of things of which the first is to be shown no later than the second.</param>
public sealed record RouteProblem(RouteMap Map, int Start, int? End, ImmutableArray<ImmutableArray<int>> Wanted, ImmutableArray<(int First, int Then)> Order)
{
    /// <summary>Whether a thing may be shown now: all that comes before it has been.</summary>
    /// <param name="thing">A number of <see cref="Wanted"/>.</param>
    /// <param name="shown">What has been shown.</param>
    internal bool MayShow(int thing, Func<int, bool> shown)
    {
        foreach ((int first, int then) in Order)
        {
            if (then == thing && !shown(first))
            {
                return false;
            }
        }

        return true;
    }
}
