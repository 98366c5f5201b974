namespace Sightglass.Drawing.Labels;

/// <summary>Flags near enough to disturb each other: chooses directions and tiers for them. Poles ascend.</summary>
internal sealed class FlagCluster
{
    /// <summary>Of each tier that a flag is away from the machine.</summary>
    public const int TierCost = 10;

    /// <summary>Of each tier in use.</summary>
    public const int HeightCost = 100;

    private const int Impossible = int.MaxValue;
    private readonly FlagTiers _tiers;
    private readonly bool _centre;
    private readonly int _count;

    /// <summary>What each direction of each flag costs, whatever its tier.</summary>
    private readonly int[][] _penalty;

    public FlagCluster(FlagRequest[] requests, double[] poles, bool centre)
    {
        (_centre, _count) = (centre, requests.Length);
        int choices = centre ? 3 : 2;
        _tiers = new(requests, poles, choices);
        _penalty = [.. Enumerable.Range(0, choices).Select(direction => Enumerable.Range(0, _count).Select(i => Penalty(requests[i], i, (FlagDirection)direction)).ToArray())];
    }

    public (double Left, double Right) Extent(int flag, FlagDirection direction) => _tiers.Extent(flag, direction);

    /// <summary>Directions with the lowest cost that a fixed set of starts and exchanges finds.</summary>
    public FlagDirection[] Search()
    {
        FlagDirection[] best = [];
        int bestCost = Impossible;
        foreach (FlagDirection[] start in BestStarts())
        {
            int cost = Improve(start);
            if (best.Length == 0 || cost < bestCost)
            {
                (best, bestCost) = (start, cost);
            }
        }

        return best;
    }

    /// <summary>Lowest tiers for these directions, or null where two flags each cover the other's pole.</summary>
    public int[]? Tiers(FlagDirection[] directions) => _tiers.Place(directions, Impossible) ? [.. _tiers.Tiers] : null;

    private int Penalty(FlagRequest request, int flag, FlagDirection direction)
    {
        (double left, double right) = _tiers.Extent(flag, direction);
        bool strays = left < request.From || right > request.To;
        bool unliked = direction != (_centre ? FlagDirection.Centre : FlagDirection.Right);
        return (strays ? 60 : 0) + (unliked ? _centre ? 6 : 1 : 0);
    }

    // The best two; where there is no better, the first ones.
    private IEnumerable<FlagDirection[]> BestStarts()
    {
        List<(FlagDirection[] Start, int Cost)> best = [];
        foreach (FlagDirection[] start in Starts())
        {
            int cost = Cost(start, best.Count < 2 ? Impossible : best[1].Cost);
            if (best.Count < 2 || cost < best[1].Cost)
            {
                best = [.. best.Append((Start: start, Cost: cost)).OrderBy(s => s.Cost).Take(2)];
            }
        }

        return best.Select(s => s.Start);
    }

    private IEnumerable<FlagDirection[]> Starts()
    {
        for (int split = 0; split <= _count; split++)
        {
            int first = split;
            yield return Fill(i => i < first ? FlagDirection.Left : FlagDirection.Right);
        }

        if (_centre)
        {
            yield return Fill(_ => FlagDirection.Centre);
        }
    }

    private FlagDirection[] Fill(Func<int, FlagDirection> of) => [.. Enumerable.Range(0, _count).Select(of)];

    private int Improve(FlagDirection[] directions)
    {
        int cost = Cost(directions, Impossible);
        for (bool better = true; better;)
        {
            better = false;
            for (int distance = 0; distance <= 1; distance++)
            {
                for (int i = 0; i + distance < _count; i++)
                {
                    better |= Exchange(directions, i, i + distance, ref cost);
                }
            }
        }

        return cost;
    }

    private bool Exchange(FlagDirection[] directions, int i, int j, ref int cost)
    {
        FlagDirection oldI = directions[i];
        FlagDirection oldJ = directions[j];
        int choices = _centre ? 3 : 2;
        for (int a = 0; a < choices; a++)
        {
            for (int b = 0; b < (i == j ? 1 : choices); b++)
            {
                directions[i] = (FlagDirection)a;
                directions[j] = i == j ? directions[i] : (FlagDirection)b;
                if ((directions[i] == oldI && directions[j] == oldJ) || _tiers.Crosses(i, directions) || (i != j && _tiers.Crosses(j, directions)))
                {
                    continue;
                }

                int changed = Cost(directions, cost);
                if (changed < cost)
                {
                    cost = changed;
                    return true;
                }
            }
        }

        directions[i] = oldI;
        directions[j] = oldJ;
        return false;
    }

    // Impossible also where it would cost as much as the bound or more.
    private int Cost(FlagDirection[] directions, int bound)
    {
        int cost = 0;
        for (int i = 0; i < _count; i++)
        {
            cost += _penalty[(int)directions[i]][i];
        }

        return _tiers.Place(directions, bound - cost) ? cost + _tiers.Cost : Impossible;
    }
}
