using Sightglass.Plant.Plans;

namespace Sightglass.World;

/// <content>What holds nothing is solved when slots have moved.</content>
public sealed partial class World
{
    /// <summary>What reads slots that have moved since everything was solved: whoever looks has it solved first.</summary>
    private readonly Marks _roomsMoved;

    /// <summary>Solves in the order of the plan, again and again until nothing moves: what one sets another may read.</summary>
    private void Resolve()
    {
        if (_roomsMoved.IsEmpty)
        {
            return;
        }

        int? moving = 0;
        for (int round = 0; moving is not null; round++)
        {
            if (round == MostSolvingsAtOnce)
            {
                Trouble = FormattableString.Invariant($"no rest within {MostSolvingsAtOnce} rounds in the circuit of: {Plan.Resolvers[moving.Value].Name}");
                return;
            }

            moving = null;
            for (int i = _roomsMoved.From(0); i >= 0; i = _roomsMoved.From(i + 1))
            {
                _roomsMoved.Take(i);
                if (_rooms[i].Solve(_bank, _lane, _slots) && TakeOver(Plan.Resolvers[i], _rooms[i].Values))
                {
                    moving = i;
                }
            }
        }

        _roomsMoved.Clear();
    }

    /// <returns>Whether any slot moved.</returns>
    private bool TakeOver(Resolver resolver, ReadOnlySpan<double> values)
    {
        bool moved = false;
        for (int i = 0; i < values.Length; i++)
        {
            Slot slot = resolver.Sets[i];
            if (_slots[slot.Index] == values[i])
            {
                continue;
            }

            moved = true;
            if (Journal is not null && _hasBegun && resolver.Telling(i, values[i]) is { } told)
            {
                Tell(told);
            }

            SetSlot(slot, values[i]);
        }

        return moved;
    }
}
