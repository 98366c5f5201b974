using System.Collections.Immutable;

namespace Sightglass.Drawing.Labels;

/// <summary>
/// Shares flags between the room above and the room below the machine: where one has many tiers, flags that do not mind move to the other;
/// where both are full, flags of the lowest priority are given up.
/// </summary>
public sealed class FlagBoard
{
    private const int MostMoves = 60;
    private readonly IReadOnlyList<FlagWish> _wishes;
    private readonly FlagPlacer _placer;
    private readonly bool[] _up;
    private readonly bool[] _dropped;
    private readonly Dictionary<int, FlagPlace>[] _placed = new Dictionary<int, FlagPlace>[2];

    private FlagBoard(IReadOnlyList<FlagWish> wishes)
    {
        _wishes = wishes;
        _placer = new FlagPlacer([.. wishes.Select(w => w.Request)]);
        _up = [.. wishes.Select(w => w.Up)];
        _dropped = new bool[wishes.Count];
        Refresh();
    }

    /// <summary>For each wish where its flag flies, or null where it was given up.</summary>
    /// <param name="wishes">The flags.</param>
    /// <param name="mostTiers">Tiers that each of the two rooms has.</param>
    public static ImmutableArray<(bool Up, FlagPlace Place)?> Place(IReadOnlyList<FlagWish> wishes, int mostTiers)
    {
        FlagBoard board = new(wishes);
        board.Balance();
        board.GiveUp(mostTiers);
        board.TakeBack(mostTiers);
        return [.. Enumerable.Range(0, wishes.Count).Select(i => board._dropped[i] ? ((bool, FlagPlace)?)null : (board._up[i], board._placed[board._up[i] ? 1 : 0][i]))];
    }

    private void Balance()
    {
        HashSet<int> tried = [];
        double cost = Cost();
        for (int moves = 0; moves < MostMoves; moves++)
        {
            int? flag = Candidates(Crowded()).Where(i => !tried.Contains(i)).Select(i => (int?)i).FirstOrDefault();
            if (flag is not { } moved)
            {
                return;
            }

            tried.Add(moved);
            _up[moved] = !_up[moved];
            Refresh();
            double changed = Cost();
            if (changed < cost)
            {
                cost = changed;
            }
            else
            {
                _up[moved] = !_up[moved];
                Refresh();
            }
        }
    }

    private void GiveUp(int mostTiers)
    {
        for (int room = 0; room < 2; room++)
        {
            while (Tiers(room) > mostTiers)
            {
                int worst = _placed[room].Where(p => p.Value.Tier > 0)
                    .OrderBy(p => _wishes[p.Key].Priority).ThenByDescending(p => p.Value.Tier).ThenBy(p => p.Key).First(p => IsUnderTop(room, p.Key, mostTiers)).Key;
                _dropped[worst] = true;
                Refresh();
            }
        }
    }

    // What was given up too soon comes back, the most wanted first.
    private void TakeBack(int mostTiers)
    {
        foreach (int flag in Enumerable.Range(0, _wishes.Count).Where(i => _dropped[i]).OrderByDescending(i => _wishes[i].Priority).ThenBy(i => i).ToList())
        {
            _dropped[flag] = false;
            Refresh();
            if (Math.Max(Tiers(0), Tiers(1)) > mostTiers)
            {
                _up[flag] = !_up[flag];
                Refresh();
            }

            if (Math.Max(Tiers(0), Tiers(1)) > mostTiers)
            {
                _up[flag] = !_up[flag];
                _dropped[flag] = true;
                Refresh();
            }
        }
    }

    // Only flags near a pole that is too high can help it down.
    private bool IsUnderTop(int room, int flag, int mostTiers) => _placed[room].Any(p => p.Value.Tier >= mostTiers
        && Math.Abs(p.Value.Pole - _placed[room][flag].Pole) < 3 * (_wishes[p.Key].Request.Width + _wishes[flag].Request.Width));

    private int Crowded() => Tiers(1) > Tiers(0) ? 1 : 0;

    // Flags that stand in the way of the highest one, the most willing first.
    private IEnumerable<int> Candidates(int room)
    {
        int top = Tiers(room) - 1;
        return _placed[room].Where(p => p.Value.Tier > 0 && IsUnderTop(room, p.Key, top))
            .Select(p => p.Key).OrderBy(i => _wishes[i].MoveCost).ThenBy(i => i);
    }

    private int Tiers(int room) => _placed[room].Count == 0 ? 0 : _placed[room].Values.Max(p => p.Tier) + 1;

    private double Cost()
    {
        double moved = Enumerable.Range(0, _wishes.Count).Where(i => _up[i] != _wishes[i].Up).Sum(i => _wishes[i].MoveCost);
        return (_placed[0].Values.Sum(p => p.Tier) + _placed[1].Values.Sum(p => p.Tier)) * 0.6
            + (8 * Math.Max(Tiers(0), Tiers(1))) + (2 * Math.Min(Tiers(0), Tiers(1))) + moved;
    }

    private void Refresh()
    {
        for (int room = 0; room < 2; room++)
        {
            bool up = room == 1;
            _placed[room] = _placer.Place(Enumerable.Range(0, _wishes.Count).Where(i => !_dropped[i] && _up[i] == up));
        }
    }
}
