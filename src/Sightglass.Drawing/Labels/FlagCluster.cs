namespace Sightglass.Drawing.Labels;

/// <summary>Flags near enough to disturb each other: chooses directions and tiers for them. Poles ascend.</summary>
internal sealed class FlagCluster
{
    private const int Impossible = int.MaxValue;
    private const int Open = 1;
    private const int Done = 2;
    private const int TierCost = 10;
    private const int HeightCost = 100;
    private readonly FlagRequest[] _requests;
    private readonly double[] _poles;
    private readonly bool _centre;
    private readonly int _count;
    private readonly double[][] _left = new double[3][];
    private readonly double[][] _right = new double[3][];
    private readonly int[][] _firstCovered = new int[3][];
    private readonly int[][] _lastCovered = new int[3][];
    private readonly int[] _tiers;
    private readonly int[] _state;
    private readonly (int Tier, double Left, double Right)[] _done;
    private int _doneCount;
    private int _highest;
    private int _sum;
    private int _bound = Impossible;

    public FlagCluster(FlagRequest[] requests, double[] poles, bool centre)
    {
        (_requests, _poles, _centre, _count) = (requests, poles, centre, requests.Length);
        _tiers = new int[_count];
        _state = new int[_count];
        _done = new (int, double, double)[_count];
        for (int direction = 0; direction < 3; direction++)
        {
            Measure(direction);
        }
    }

    public (double Left, double Right) Extent(int flag, FlagDirection direction) => (_left[(int)direction][flag], _right[(int)direction][flag]);

    /// <summary>Directions with the lowest cost that a fixed set of starts and exchanges finds.</summary>
    public FlagDirection[] Search()
    {
        FlagDirection[] best = [];
        int bestCost = Impossible;
        foreach (FlagDirection[] start in Starts().OrderBy(s => Cost(s, Impossible)).Take(2).ToList())
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
    public int[]? Tiers(FlagDirection[] directions) => TryTiers(directions) ? [.. _tiers] : null;

    private void Measure(int direction)
    {
        double[] left = _left[direction] = new double[_count];
        double[] right = _right[direction] = new double[_count];
        int[] first = _firstCovered[direction] = new int[_count];
        int[] last = _lastCovered[direction] = new int[_count];
        for (int i = 0; i < _count; i++)
        {
            double width = _requests[i].Width;
            left[i] = _poles[i] - (direction switch { (int)FlagDirection.Right => 0, (int)FlagDirection.Left => width, _ => width / 2 });
            right[i] = left[i] + width;
            first[i] = i;
            while (first[i] > 0 && _poles[first[i] - 1] > left[i] - FlagPlacer.Clearance)
            {
                first[i]--;
            }

            last[i] = i;
            while (last[i] + 1 < _count && _poles[last[i] + 1] < right[i] + FlagPlacer.Clearance)
            {
                last[i]++;
            }
        }
    }

    private bool TryTiers(FlagDirection[] directions)
    {
        Array.Clear(_state);
        (_doneCount, _highest, _sum) = (0, 0, 0);
        for (int i = 0; i < _count; i++)
        {
            if (_state[i] == 0 && !Visit(i, directions))
            {
                return false;
            }
        }

        return true;
    }

    // Depth first: all flags whose poles this one covers get their tiers before it.
    private bool Visit(int flag, FlagDirection[] directions)
    {
        _state[flag] = Open;
        int direction = (int)directions[flag];
        int least = 0;
        int last = _lastCovered[direction][flag];
        for (int j = _firstCovered[direction][flag]; j <= last; j++)
        {
            if (j == flag)
            {
                continue;
            }

            if (_state[j] == Open || (_state[j] == 0 && !Visit(j, directions)))
            {
                return false;
            }

            least = Math.Max(least, _tiers[j] + 1);
        }

        double left = _left[direction][flag];
        double right = _right[direction][flag];
        while (Taken(least, left - FlagPlacer.Gap, right + FlagPlacer.Gap))
        {
            least++;
        }

        _tiers[flag] = least;
        _state[flag] = Done;
        _done[_doneCount++] = (least, left, right);
        _highest = Math.Max(_highest, least);
        _sum += least;

        // What is worse already than the best known need not be placed to its end.
        return (_sum * TierCost) + (_highest * HeightCost) < _bound;
    }

    private bool Taken(int tier, double left, double right)
    {
        foreach ((int other, double from, double to) in _done.AsSpan(0, _doneCount))
        {
            if (other == tier && left < to && from < right)
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
                if (directions[i] == oldI && directions[j] == oldJ)
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
        _bound = bound;
        bool possible = TryTiers(directions);
        _bound = Impossible;
        if (!possible)
        {
            return Impossible;
        }

        int cost = (_sum * TierCost) + (_highest * HeightCost);
        for (int i = 0; i < _count; i++)
        {
            int direction = (int)directions[i];
            bool strays = _left[direction][i] < _requests[i].From || _right[direction][i] > _requests[i].To;
            bool unliked = directions[i] != (_centre ? FlagDirection.Centre : FlagDirection.Right);
            cost += (strays ? 60 : 0) + (unliked ? _centre ? 6 : 1 : 0);
        }

        return cost;
    }
}
