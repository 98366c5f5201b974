using System.Numerics;

namespace Sightglass.Drawing.Labels;

/// <summary>
/// Lowest tiers of flags near enough to disturb each other, for any choice of directions. Poles ascend. Which flags cover whose pole and which cannot share a tier
/// depends on directions alone: it is laid down once, as sets of bits, since a search asks thousands of times.
/// </summary>
internal sealed class FlagTiers
{
    private readonly int _count;
    private readonly int _choices;

    /// <summary>Words of a set of flags.</summary>
    private readonly int _words;

    private readonly double[][] _left;
    private readonly double[][] _right;

    /// <summary>A set for each direction and flag: those whose poles it covers.</summary>
    private readonly ulong[] _covers;

    /// <summary>A set for each direction, flag and direction of others: those too near for one tier.</summary>
    private readonly ulong[] _meets;

    /// <summary>1 for each direction and flag that covers a pole: it cannot be next to the machine.</summary>
    private readonly int[] _least;

    /// <summary>A set for each tier and direction.</summary>
    private readonly ulong[] _taken;

    /// <summary>A set for each tier, whatever the direction.</summary>
    private readonly ulong[] _level;

    private readonly ulong[] _open;
    private readonly ulong[] _done;
    private readonly int[] _tiers;
    private int _bound;

    /// <param name="requests">Flags, by their poles.</param>
    /// <param name="poles">X of each pole, ascending.</param>
    /// <param name="choices">How many of the <see cref="FlagDirection"/>s there are to choose from.</param>
    public FlagTiers(FlagRequest[] requests, double[] poles, int choices)
    {
        (_count, _choices, _words) = (requests.Length, choices, (requests.Length + 63) / 64);
        (_left, _right) = (new double[choices][], new double[choices][]);
        for (int direction = 0; direction < choices; direction++)
        {
            _left[direction] = [.. requests.Zip(poles, (r, x) => x - (direction switch { (int)FlagDirection.Right => 0, (int)FlagDirection.Left => r.Width, _ => r.Width / 2 }))];
            _right[direction] = [.. _left[direction].Zip(requests, (x, r) => x + r.Width)];
        }

        _covers = new ulong[choices * _count * _words];
        _meets = new ulong[choices * _count * choices * _words];
        _least = new int[choices * _count];
        for (int row = 0; row < choices * _count; row++)
        {
            Measure(row / _count, row % _count, poles);
        }

        _taken = new ulong[_count * choices * _words];
        _level = new ulong[_count * _words];
        _open = new ulong[_words];
        _done = new ulong[_words];
        _tiers = new int[_count];
    }

    /// <summary>Tier of each flag, once placed.</summary>
    public ReadOnlySpan<int> Tiers => _tiers;

    /// <summary>The highest tier in use.</summary>
    public int Highest { get; private set; }

    /// <summary>Of all tiers; before all flags are placed, the least that it will be.</summary>
    public int Sum { get; private set; }

    /// <summary>What tiers cost, as far as flags are placed: never more than in the end.</summary>
    public int Cost => (Sum * FlagCluster.TierCost) + (Highest * FlagCluster.HeightCost);

    public (double Left, double Right) Extent(int flag, FlagDirection direction) => (_left[(int)direction][flag], _right[(int)direction][flag]);

    /// <summary>Places all flags as low as they go. False where two each cover the other's pole, and where it would cost the bound or more.</summary>
    public bool Place(FlagDirection[] directions, int bound)
    {
        Array.Clear(_taken, 0, (Highest + 1) * _choices * _words);
        Array.Clear(_level, 0, (Highest + 1) * _words);
        Array.Clear(_open);
        Array.Clear(_done);
        (_bound, Highest, Sum) = (bound, 0, 0);
        for (int i = 0; i < _count; i++)
        {
            Sum += _least[((int)directions[i] * _count) + i];
        }

        if (Cost >= bound)
        {
            return false;
        }

        for (int i = 0; i < _count; i++)
        {
            if (((_done[i >> 6] >> (i & 63)) & 1) == 0 && !Visit(i, directions))
            {
                return false;
            }
        }

        return true;
    }

    /// <summary>Whether a flag and another each cover the other's pole, so that neither can stand farther out.</summary>
    public bool Crosses(int flag, FlagDirection[] directions)
    {
        ReadOnlySpan<ulong> covers = _covers.AsSpan((((int)directions[flag] * _count) + flag) * _words, _words);
        for (int w = 0; w < covers.Length; w++)
        {
            for (ulong left = covers[w]; left != 0; left &= left - 1)
            {
                int other = (w << 6) + BitOperations.TrailingZeroCount(left);
                if (((_covers[((((int)directions[other] * _count) + other) * _words) + (flag >> 6)] >> (flag & 63)) & 1) != 0)
                {
                    return true;
                }
            }
        }

        return false;
    }

    private void Measure(int direction, int flag, double[] poles)
    {
        double left = _left[direction][flag];
        double right = _right[direction][flag];
        int row = (direction * _count) + flag;
        for (int other = 0; other < _count; other++)
        {
            ulong bit = 1UL << (other & 63);
            bool covered = other < flag ? poles[other] > left - FlagPlacer.Clearance : other > flag && poles[other] < right + FlagPlacer.Clearance;
            if (covered)
            {
                _covers[(row * _words) + (other >> 6)] |= bit;
                _least[row] = 1;
            }

            for (int way = 0; way < _choices; way++)
            {
                if (_left[way][other] < right + FlagPlacer.Gap && left - FlagPlacer.Gap < _right[way][other])
                {
                    _meets[(((row * _choices) + way) * _words) + (other >> 6)] |= bit;
                }
            }
        }
    }

    // Depth first: all flags whose poles this one covers get their tiers before it.
    private bool Visit(int flag, FlagDirection[] directions)
    {
        int row = ((int)directions[flag] * _count) + flag;
        ReadOnlySpan<ulong> covers = _covers.AsSpan(row * _words, _words);
        if (Shared(covers, _open))
        {
            return false;
        }

        ulong bit = 1UL << (flag & 63);
        _open[flag >> 6] |= bit;
        for (int w = 0; w < covers.Length; w++)
        {
            for (ulong left; (left = covers[w] & ~_done[w]) != 0;)
            {
                if (!Visit((w << 6) + BitOperations.TrailingZeroCount(left), directions))
                {
                    return false;
                }
            }
        }

        _open[flag >> 6] &= ~bit;
        _done[flag >> 6] |= bit;
        int tier = TierOf(row, covers);
        _tiers[flag] = tier;
        _level[(tier * _words) + (flag >> 6)] |= bit;
        _taken[(((tier * _choices) + (int)directions[flag]) * _words) + (flag >> 6)] |= bit;
        Highest = Math.Max(Highest, tier);
        Sum += tier - _least[row];

        // What is worse already than the best known need not be placed to its end.
        return Cost < _bound;
    }

    private int TierOf(int row, ReadOnlySpan<ulong> covers)
    {
        int tier = Highest + 1;
        while (tier > 0 && !Shared(covers, _level.AsSpan((tier - 1) * _words, _words)))
        {
            tier--;
        }

        ReadOnlySpan<ulong> meets = _meets.AsSpan(row * _choices * _words, _choices * _words);
        while (tier <= Highest && Shared(meets, _taken.AsSpan(tier * _choices * _words, _choices * _words)))
        {
            tier++;
        }

        return tier;
    }

    private static bool Shared(ReadOnlySpan<ulong> a, ReadOnlySpan<ulong> b)
    {
        for (int w = 0; w < a.Length && w < b.Length; w++)
        {
            if ((a[w] & b[w]) != 0)
            {
                return true;
            }
        }

        return false;
    }
}
