using Sightglass.Network.Circuits;
using Sightglass.Network.Compile;
using Sightglass.Plant.Plans;
using Sightglass.Plant.Signals;

namespace Sightglass.Plant.Circuits;

/// <summary>One circuit while it is put together: wires that something joins, what lies between them, and the slots that it reads and sets.</summary>
internal sealed class CircuitPart
{
    private readonly List<ResolverInput> _inputs = [];
    private readonly List<CircuitOutput> _outputs = [];
    private readonly Dictionary<string, Node> _nodes = new(StringComparer.Ordinal);

    /// <param name="name">For messages.</param>
    public CircuitPart(string name)
    {
        Name = name;
        Frame = Draft.AddNode("frame");
        Draft.Hold(Frame);
    }

    public string Name { get; }

    public CircuitBuilder Draft { get; } = new();

    /// <summary>The metal of the vehicles, 0 V.</summary>
    public Node Frame { get; }

    /// <summary>The coils of items, by their names.</summary>
    public Dictionary<string, Coil> Coils { get; } = new(StringComparer.Ordinal);

    /// <summary>What ties its items to slots, for leaving out what nobody asks about.</summary>
    public ItemTies Ties { get; } = new();

    public Node NodeOf(string wire)
    {
        if (!_nodes.TryGetValue(wire, out Node node))
        {
            _nodes[wire] = node = Draft.AddNode(wire);
        }

        return node;
    }

    /// <summary>An opening or a voltage that follows from the slots.</summary>
    public Input Follow(string name, SlotFunction value) => Add(name, new(value, null));

    /// <summary>An opening that is 1 while a margin holds (one that sees slots only) times a function of the slots.</summary>
    public Input Follow(string name, Signal margin, SlotFunction? value = null) => Add(name, new(value, margin));

    public void TellVoltage(Slot slot, Node plus, Node minus) => Add(new(slot, CircuitOutputKind.Voltage) { Plus = plus, Minus = minus });

    public void TellCurrent(Slot slot, Branch branch) => Add(new(slot, CircuitOutputKind.Current) { Branch = branch });

    public void TellMade(Slot slot, Branch branch) => Add(new(slot, CircuitOutputKind.Made) { Branch = branch });

    public void TellSlope(Slot slot, Branch branch, Input force) => Add(new(slot, CircuitOutputKind.Slope) { Branch = branch, Force = force });

    public void TellCoil(Slot up, Slot chatters, Coil coil, string name)
    {
        Add(new(up, CircuitOutputKind.Up) { Coil = coil, Name = name });
        Add(new(chatters, CircuitOutputKind.Chatters) { Coil = coil, Name = name });
    }

    /// <summary>The circuit; null where no current can be asked for.</summary>
    public CircuitResolver? Build() => _outputs.Count == 0 ? null : new(Name, Draft.Build, [.. _inputs], [.. _outputs]);

    private Input Add(string name, ResolverInput input)
    {
        _inputs.Add(input);
        return Draft.AddInput(name, 0);
    }

    private void Add(CircuitOutput output)
    {
        _outputs.Add(output);
        Ties.Sets.Add(output.Slot.Index);
    }
}
