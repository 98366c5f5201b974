using Sightglass.Basics.Numbers;
using Sightglass.Network.Groups;
using Sightglass.Plant.Plans;

namespace Sightglass.Plant.Signals;

/// <summary>Works out the margins of a network's switches for its steps: what follows slots alone once until one moves, and of the rest what those need that are asked for.</summary>
public sealed class MarginSheet(LaneBank bank, int network, MarginTape margins) : GuardSheet
{
    private readonly LaneRoom _room = Prepared(margins);
    private readonly bool[] _needed = new bool[margins.Tape.Length];
    private readonly int[] _still = new int[margins.Tape.Length];
    private readonly int[] _moving = new int[margins.Tape.Length];
    private int _stillCount;
    private int _movingCount;
    private long _wanted = -1;
    private long _slots = -1;

    public override void Evaluate(in StateView state, GuardSet wanted, Span<Lanes> values)
    {
        ArgumentNullException.ThrowIfNull(wanted);
        bank.LookAt(network, state);
        Span<Lanes> room = _room.All;
        if (_wanted != wanted.Version)
        {
            Choose(wanted);
            _wanted = wanted.Version;
            _slots = -1;
        }

        if (_slots != bank.SlotVersion)
        {
            _slots = bank.SlotVersion;
            TakeSlots(room);
            margins.Tape.Run(_still.AsSpan(0, _stillCount), room);
        }

        foreach ((Signal leaf, int step) in margins.Leaves)
        {
            if (_needed[step] && margins.Follows[step])
            {
                room[step] = leaf.Evaluate(bank);
            }
        }

        margins.Tape.Run(_moving.AsSpan(0, _movingCount), room);
        for (int g = wanted.From(0); g >= 0; g = wanted.From(g + 1))
        {
            values[g] = room[margins.RootOf[g]];
        }
    }

    private static LaneRoom Prepared(MarginTape margins)
    {
        LaneRoom room = new(margins.Tape.Length);
        margins.Tape.Prepare(room.All);
        return room;
    }

    /// <summary>What is needed for the margins asked for, from the last step to the first.</summary>
    private void Choose(GuardSet wanted)
    {
        Array.Clear(_needed);
        for (int g = wanted.From(0); g >= 0; g = wanted.From(g + 1))
        {
            _needed[margins.RootOf[g]] = true;
        }

        for (int i = _needed.Length - 1; i >= 0; i--)
        {
            if (_needed[i])
            {
                margins.Tape.MarkOperands(i, _needed);
            }
        }

        (_stillCount, _movingCount) = (0, 0);
        for (int i = 0; i < _needed.Length; i++)
        {
            if (!_needed[i] || margins.Tape.IsGiven(i))
            {
                continue;
            }

            if (margins.Follows[i])
            {
                _moving[_movingCount++] = i;
            }
            else
            {
                _still[_stillCount++] = i;
            }
        }
    }

    private void TakeSlots(Span<Lanes> room)
    {
        foreach ((Slot slot, int step) in margins.Slots)
        {
            room[step] = bank.SlotLanes(slot);
        }

        foreach ((Signal leaf, int step) in margins.Leaves)
        {
            if (_needed[step] && !margins.Follows[step])
            {
                room[step] = leaf.Evaluate(bank);
            }
        }
    }
}
