using Sightglass.Network.Compile;
using Sightglass.Network.Phasors;
using Sightglass.Plant.Plans;
using Sightglass.Plant.Signals;

namespace Sightglass.Plant.Feeders;

/// <summary>One feeder while it is put together: busbars that something joins, what lies between them, and the slots that it reads and sets.</summary>
internal sealed class FeederPart
{
    private readonly List<ResolverInput> _inputs = [];
    private readonly List<FeederOutput> _outputs = [];
    private readonly List<FeederLimit> _limits = [];
    private readonly Dictionary<string, Busbar> _buses = new(StringComparer.Ordinal);

    /// <param name="name">For messages.</param>
    public FeederPart(string name)
    {
        Name = name;
        Frame = Draft.AddTerminal("frame");
        Neutral = Draft.AddTerminal("neutral");
        Draft.Ground(Neutral);
    }

    public string Name { get; }

    public LoadFlowBuilder Draft { get; } = new();

    /// <summary>The metal of the vehicles. It hangs on the neutral by what grounds the sources, so that one phase that touches it moves it and is no short.</summary>
    public Terminal Frame { get; }

    /// <summary>The neutral of all sources, from which voltages are counted.</summary>
    public Terminal Neutral { get; }

    /// <summary>What ties its items to slots, for leaving out what nobody asks about.</summary>
    public ItemTies Ties { get; } = new();

    /// <summary>How many sources it has so far: no two are in step.</summary>
    public int Sources { get; set; }

    public Busbar BusOf(string name)
    {
        if (!_buses.TryGetValue(name, out Busbar? bus))
        {
            _buses[name] = bus = NewBus(name);
        }

        return bus;
    }

    public Busbar NewBus(string name) => new(Draft.AddTerminal($"{name}, A"), Draft.AddTerminal($"{name}, B"), Draft.AddTerminal($"{name}, C"));

    /// <summary>A number that follows from the slots.</summary>
    public Input Follow(string name, SlotFunction value) => Add(name, new(value, null));

    /// <summary>A function of the slots while a margin holds (one that sees slots only), else 0.</summary>
    public Input Follow(string name, Signal margin, SlotFunction value) => Add(name, new(value, margin));

    /// <summary>Three wires that are alike and do not act on each other.</summary>
    /// <param name="ohms">Of each, its own.</param>
    /// <param name="reactance">Of each, Ω at the rated frequency.</param>
    /// <param name="closed">Of each: above 0 it is whole.</param>
    public Line AddLine(string name, Busbar from, Busbar to, double ohms, double reactance, params ReadOnlySpan<Input> closed)
    {
        Phasor z = new(ohms, reactance);
        return Draft.AddLine(name, from.Phases, to.Phases, [z, default, default, default, z, default, default, default, z], closed.Length == 1 ? [closed[0], closed[0], closed[0]] : closed);
    }

    /// <summary>For each phase 1 while all is well, 0 where a fault with the number of a phase says so.</summary>
    public Input[] Phases(string name, SlotFunction whole, Slot openPhase) => [.. Enumerable.Range(1, 3).Select(p => Follow(name, s => s[openPhase.Index] == p ? 0 : whole(s)))];

    public void Tell(Slot slot, FeederOutputKind kind, Busbar bus) => Add(new(slot, kind) { Bus = bus });

    public void TellCurrent(Slot slot, Line line) => Add(new(slot, FeederOutputKind.Current) { Line = line });

    public void TellPower(Slot slot, Line line, Busbar from) => Add(new(slot, FeederOutputKind.Power) { Line = line, Bus = from });

    public void TellDrawn(Slot slot, params ReadOnlySpan<Load> loads) => Add(new(slot, FeederOutputKind.Drawn) { Loads = [.. loads] });

    public void TellGiven(Slot slot, Input input) => Add(new(slot, FeederOutputKind.Given) { Input = input });

    /// <summary>Lets a source give no more than a current in any wire of its line: its place among the limits.</summary>
    public int Limit(Input force, Line line, double amperes)
    {
        _limits.Add(new(force, line, amperes));
        return _limits.Count - 1;
    }

    public void TellLimited(Slot slot, int limit) => Add(new(slot, FeederOutputKind.Limited) { Limit = limit });

    public void TellFrame(Slot slot) => Add(new(slot, FeederOutputKind.FrameVoltage));

    /// <summary>The feeder; null where nothing of it can be asked for.</summary>
    public FeederResolver? Build() => _outputs.Count == 0 ? null : new(Name, Draft.Build, Frame, [.. _inputs], [.. _outputs], [.. _limits]);

    private Input Add(string name, ResolverInput input)
    {
        _inputs.Add(input);
        return Draft.AddInput(name, 0);
    }

    private void Add(FeederOutput output)
    {
        _outputs.Add(output);
        Ties.Sets.Add(output.Slot.Index);
    }
}
