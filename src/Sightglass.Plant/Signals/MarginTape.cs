using System.Collections.Immutable;
using Sightglass.Basics.Tapes;
using Sightglass.Plant.Plans;

namespace Sightglass.Plant.Signals;

/// <summary>The margins of a network's switches on one tape, shared by all banks of a plan.</summary>
public sealed class MarginTape
{
    internal MarginTape(Plan plan, int network)
    {
        SignalNotes notes = new(plan.Signals);
        ImmutableArray<SwitchRule> switches = [.. plan.Switches.Where(s => s.Network == network)];
        Moves = [.. plan.Switches.Index().Where(s => s.Item.Network == network).Select(s => plan.Uses.SeesState[s.Index])];
        RootOf = [.. switches.Select((s, i) => Moves[i] ? notes.StepOf(notes.Of(s.Margin)) : -1)];
        (Tape, Leaves, Slots) = (notes.ToTape(), [.. notes.Leaves], [.. notes.Slots]);
        Follows = new bool[Tape.Length];
        SortedSet<int> read = [.. Slots.Select(s => s.Slot.Index)];
        foreach ((Signal leaf, int step) in Leaves)
        {
            SignalReads reads = new(plan.Signals);
            reads.Add(leaf);
            read.UnionWith(reads.Slots);
            Follows[step] = reads.Networks.Count > 0;
        }

        SlotsRead = [.. read];

        for (int i = 0; i < Tape.Length; i++)
        {
            Follows[i] |= Tape.AnyOperand(i, Follows);
        }
    }

    public Tape Tape { get; }

    /// <summary>Of each switch of the network, in order, whether its margin follows a state.</summary>
    public ImmutableArray<bool> Moves { get; }

    /// <summary>The step that each margin comes from; −1 of one that follows no state.</summary>
    public ImmutableArray<int> RootOf { get; }

    public ImmutableArray<(Signal Signal, int Step)> Leaves { get; }

    public ImmutableArray<(Slot Slot, int Step)> Slots { get; }

    /// <summary>All slots that the margins come from, by their indices.</summary>
    public ImmutableArray<int> SlotsRead { get; }

    /// <summary>Of each step, whether it follows a state; else it stays what it is until a slot moves.</summary>
    internal bool[] Follows { get; }
}
