namespace Sightglass.Drawing.Labels;

/// <summary>Flags near enough to disturb each other: chooses directions and tiers for them. Poles ascend.</summary>
internal sealed class FlagCluster(FlagRequest[] requests, double[] poles, bool centre)
{
    private const int Impossible = int.MaxValue;
    private readonly int _count = requests.Length;

    public (double Left, double Right) Extent(int flag, FlagDirection direction) => direction switch
    {
        FlagDirection.Right => (poles[flag], poles[flag] + requests[flag].Width),
        FlagDirection.Left => (poles[flag] - requests[flag].Width, poles[flag]),
        _ => (poles[flag] - (requests[flag].Width / 2), poles[flag] + (requests[flag].Width / 2)),
    };

    /// <summary>Directions with the lowest cost among a few plain ones: quick, for comparing.</summary>
    public FlagDirection[] Quick() => Starts().MinBy(Cost)!;

    /// <summary>Directions with the lowest cost that a fixed set of starts and exchanges finds.</summary>
    public FlagDirection[] Search()
    {
        FlagDirection[] best = [];
        int bestCost = Impossible;
        foreach (FlagDirection[] start in Starts().OrderBy(Cost).Take(3).ToList())
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
    public int[]? Tiers(FlagDirection[] directions)
    {
        (double Left, double Right)[] extents = new (double, double)[_count];
        for (int i = 0; i < _count; i++)
        {
            extents[i] = Extent(i, directions[i]);
        }

        int[] tiers = new int[_count];
        int[] state = new int[_count];
        for (int i = 0; i < _count; i++)
        {
            if (state[i] == 0 && !Visit(i, extents, tiers, state))
            {
                return null;
            }
        }

        return tiers;
    }

    // Depth first: all flags whose poles this one covers get their tiers before it.
    private bool Visit(int flag, (double Left, double Right)[] extents, int[] tiers, int[] state)
    {
        state[flag] = 1;
        int least = 0;
        for (int j = flag - 1; j >= 0 && poles[j] > extents[flag].Left - FlagPlacer.Clearance; j--)
        {
            if (!Above(j, ref least))
            {
                return false;
            }
        }

        for (int j = flag + 1; j < _count && poles[j] < extents[flag].Right + FlagPlacer.Clearance; j++)
        {
            if (!Above(j, ref least))
            {
                return false;
            }
        }

        while (Taken(flag, least, extents, tiers, state))
        {
            least++;
        }

        tiers[flag] = least;
        state[flag] = 2;
        return true;

        bool Above(int j, ref int least)
        {
            if (state[j] == 1 || (state[j] == 0 && !Visit(j, extents, tiers, state)))
            {
                return false;
            }

            least = Math.Max(least, tiers[j] + 1);
            return true;
        }
    }

    private bool Taken(int flag, int tier, (double Left, double Right)[] extents, int[] tiers, int[] state)
    {
        (double left, double right) = extents[flag];
        for (int j = 0; j < _count; j++)
        {
            if (state[j] == 2 && tiers[j] == tier && left < extents[j].Right + FlagPlacer.Gap && extents[j].Left < right + FlagPlacer.Gap)
            {
                return true;
            }
        }

        return false;
    }

    private IEnumerable<FlagDirection[]> Starts()
    {
        for (int split = 0; split <= _count; split++)
        {
            int first = split;
            yield return Fill(i => i < first ? FlagDirection.Left : FlagDirection.Right);
        }

        if (centre)
        {
            yield return Fill(_ => FlagDirection.Centre);
        }
    }

    private FlagDirection[] Fill(Func<int, FlagDirection> of) => [.. Enumerable.Range(0, _count).Select(of)];

    private int Improve(FlagDirection[] directions)
    {
        int cost = Cost(directions);
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
        int choices = centre ? 3 : 2;
        for (int a = 0; a < choices; a++)
        {
            for (int b = 0; b < (i == j ? 1 : choices); b++)
            {
                directions[i] = (FlagDirection)a;
                directions[j] = i == j ? directions[i] : (FlagDirection)b;
                int changed = Cost(directions);
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

    private int Cost(FlagDirection[] directions)
    {
        int[]? tiers = Tiers(directions);
        if (tiers is null)
        {
            return Impossible;
        }

        int cost = 0;
        int highest = 0;
        for (int i = 0; i < _count; i++)
        {
            (double left, double right) = Extent(i, directions[i]);
            bool strays = left < requests[i].From || right > requests[i].To;
            bool unliked = directions[i] != (centre ? FlagDirection.Centre : FlagDirection.Right);
            cost += (tiers[i] * 10) + (strays ? 60 : 0) + (unliked ? centre ? 6 : 1 : 0);
            highest = Math.Max(highest, tiers[i]);
        }

        return cost + (highest * 100);
    }
}
