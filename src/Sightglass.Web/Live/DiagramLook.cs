using System.Collections.Immutable;
using Sightglass.Basics.Language;
using Sightglass.Basics.Quantities;
using Sightglass.Book.Kinds;
using Sightglass.Book.Model;
using Sightglass.Drawing.Diagram;
using Sightglass.Plant.Plans;
using Sightglass.Plant.Signals;

namespace Sightglass.Web.Live;

/// <summary>Reads the state of a diagram from a world with a state in view.</summary>
internal sealed class DiagramLook
{
    private static readonly Unit s_volt = UnitTable.Get("V");

    private readonly Plan _plan;
    private readonly Unit _volume;
    private readonly Unit _pressure;
    private readonly Unit _temperature;
    private readonly Unit _flow;
    private readonly Unit _burn;
    private readonly ImmutableArray<(string Name, Signal Level, double Depth)> _levels;
    private readonly ImmutableArray<(string Name, Signal Volume)> _volumes;
    private readonly ImmutableArray<(string Name, Signal Pressure)> _pressures;
    private readonly ImmutableArray<(string Name, Signal Voltage)> _voltages;
    private readonly ImmutableArray<(string Name, Signal Temperature)> _temperatures;
    private readonly ImmutableArray<(string Name, Signal Closed)> _contacts;
    private readonly ImmutableArray<string> _leaky;
    private readonly ImmutableArray<(string Name, Signal Flow)> _flows;
    private readonly ImmutableArray<(Item Item, Signal Running)> _machines;
    private readonly ImmutableArray<Item> _readings;

    public DiagramLook(Plan plan)
    {
        _plan = plan;
        _volume = plan.Book.ShownIn.GetValueOrDefault(Dimension.Volume) ?? UnitTable.Get("L");
        _pressure = plan.Book.ShownIn.GetValueOrDefault(Dimension.Pressure) ?? UnitTable.Get("psi");
        _temperature = plan.Book.ShownIn.GetValueOrDefault(Dimension.Kelvin) ?? UnitTable.Get("degC");
        _flow = plan.Book.ShownIn.GetValueOrDefault(Dimension.VolumeFlow) ?? UnitTable.Get("L/min");
        _burn = UnitTable.Find($"{_volume.Symbol}/h") ?? _flow;
        ImmutableArray<Item> items = [.. plan.Book.Items.Values];
        Item[] tanks = [.. items.Where(i => i.Kind.Role == KindRole.Store && plan.FindSignal($"level of {i.Name}") is not null)];
        _levels = [.. tanks.Select(i => (i.Name, plan.FindSignal($"level of {i.Name}")!, Depth(i)))];
        _volumes = [.. tanks.Select(i => (i.Name, plan.FindSignal($"volume of {i.Name}")!))];
        Item[] closed = [.. items.Where(i => i.Kind.Role == KindRole.Store && !tanks.Contains(i))];
        _pressures = [.. closed.Select(i => (i.Name, Pressure: plan.FindSignal($"pressure of {i.Name}"))).Where(p => p.Pressure is not null).Select(p => (p.Name, p.Pressure!))];
        _temperatures =
        [
            .. closed.Where(i => _pressures.All(p => p.Name != i.Name)).Select(i => (i.Name, Temperature: plan.FindSignal($"temperature of {i.Name}")))
                .Where(t => t.Temperature is not null).Select(t => (t.Name, t.Temperature!)),
        ];
        _voltages = [.. items.Where(i => i.Kind is { Role: KindRole.Wire, Alternates: true }).Select(i => (i.Name, plan.FindSignal($"voltage of {i.Name}")!))];
        _contacts = [.. items.Where(i => i.Kind.Alternates).Select(i => (i.Name, Closed: plan.FindSignal($"closed of {i.Name}"))).Where(c => c.Closed is not null).Select(c => (c.Name, c.Closed!))];
        _leaky = [.. items.Where(i => i.Kind.Role == KindRole.Store && plan.Items.TryGetValue(i.Name, out ItemPlan? p) && p.Faults.ContainsKey("leak")).Select(i => i.Name)];
        _flows =
        [
            .. items.Select(i => (i.Name, Flow: plan.FindSignal($"flow of {i.Name}") ?? (i.Kind.Alternates ? plan.FindSignal($"current of {i.Name}") : null) ?? plan.FindSignal($"consumption of {i.Name}")))
                .Where(f => f.Flow is not null).Select(f => (f.Name, f.Flow!)),
        ];
        _machines = [.. items.Select(i => (Item: i, Running: plan.FindSignal($"running of {i.Name}"))).Where(m => m.Running is not null).Select(m => (m.Item, m.Running!))];
        _readings = [.. items.Where(i => i.Reading is not null && plan.Items.TryGetValue(i.Name, out ItemPlan? p) && p.Shown is not null)];
    }

    /// <summary>What was looked at with its words, in the language that is spoken.</summary>
    public static DiagramState Said(DiagramState seen) => seen with
    {
        Leaks = seen.Leaks.ToImmutableDictionary(l => l.Key, l => l.Value with { Text = Say.With($"leak, {l.Value.Text}") }),
        Machines = seen.Machines.ToImmutableDictionary(m => m.Key, m => m.Value.Runs ? m.Value with { First = Say.Word(m.Value.First) } : m.Value with { First = Say.It("stopped"), Second = Say.Word(m.Value.Second) }),
    };

    /// <summary>What is seen now, its words unsaid: whoever looks may speak another language.</summary>
    public DiagramState Look(World.World world) => new()
    {
        Levels = _levels.ToImmutableDictionary(l => l.Name, l => world.Value(l.Level) / l.Depth),
        Amounts = _volumes.ToImmutableDictionary(v => v.Name, v => QuantityFormat.Text(world.Value(v.Volume), _volume, _volume.Factor))
            .AddRange(_pressures.Select(p => KeyValuePair.Create(p.Name, QuantityFormat.Text(world.Value(p.Pressure), _pressure, _pressure.Factor))))
            .AddRange(_temperatures.Select(t => KeyValuePair.Create(t.Name, QuantityFormat.Text(world.Value(t.Temperature), _temperature, _temperature.Factor))))
            .AddRange(_voltages.Select(v => KeyValuePair.Create(v.Name, QuantityFormat.Text(world.Value(v.Voltage), s_volt, s_volt.Factor)))),
        Openings = _plan.Items.Values.Where(i => i.Position is not null && i.Item.Kind.Role == KindRole.Path)
            .ToImmutableDictionary(i => i.Item.Name, i => world.GetSlot(i.Position!.Value) > 0.5 ? 1.0 : 0)
            .AddRange(_plan.Items.Values.Where(i => i.Position is not null && i.Item.Kind.Role == KindRole.Control && i.Item.Positions.Contains("open"))
                .Select(i => KeyValuePair.Create(i.Item.Name, i.Item.Positions[(int)world.GetSlot(i.Position!.Value)] == "open" ? 1.0 : 0)))
            .AddRange(_contacts.Select(c => KeyValuePair.Create(c.Name, world.Value(c.Closed) >= 0 ? 1.0 : 0))),
        Flows = _flows.ToImmutableDictionary(f => f.Name, f => world.Value(f.Flow)),
        Readings = Readings(world),
        Leaks = Leaks(world),
        Machines = _machines.ToImmutableDictionary(m => m.Item.Name, m => Machine(world, m.Item, m.Running)),
        Moved = [.. _plan.Items.Values.Where(i => i.Position is not null && i.Item.Kind.Role == KindRole.Control && IsMoved(world, i)).Select(i => i.Item.Name)],
    };

    private static bool IsMoved(World.World world, ItemPlan item) =>
        item.Item.UsualPosition is { } usual && item.Item.Positions[(int)world.GetSlot(item.Position!.Value)] != usual;

    private static double Depth(Item tank)
    {
        double Of(string name) => tank.Parameters.TryGetValue(name, out ParameterValue? value) ? value.Number : 0;
        double depth = Of("depth");
        return depth > 0 ? depth : Of("radius") > 0 ? 2 * Of("radius") : 1;
    }

    private ImmutableDictionary<string, DiagramReading> Readings(World.World world)
    {
        ImmutableDictionary<string, DiagramReading>.Builder readings = ImmutableDictionary.CreateBuilder<string, DiagramReading>();
        foreach (Item item in _readings)
        {
            if (world.Read(item) is { } value)
            {
                Reading r = item.Reading!;
                bool glass = item.Kind.Symbol.Contains("glass", StringComparison.Ordinal);
                readings[item.Name] = new(glass ? QuantityFormat.Number(value, r.Unit, r.Resolution) : QuantityFormat.Text(value, r.Unit, r.Resolution), (value - r.Minimum) / (r.Maximum - r.Minimum));
            }
        }

        return readings.ToImmutable();
    }

    private ImmutableDictionary<string, DiagramLeak> Leaks(World.World world)
    {
        ImmutableDictionary<string, DiagramLeak>.Builder leaks = ImmutableDictionary.CreateBuilder<string, DiagramLeak>();
        foreach (string name in _leaky)
        {
            if (_plan.Items[name].Faults["leak"] is { } leak && world.GetSlot(leak[0].Slot) is double size and > 0)
            {
                Unit unit = _plan.Book.ShownIn.GetValueOrDefault(Dimension.Metre) is { } length && length.Symbol == "in" ? length : UnitTable.Get("mm");
                double flow = _plan.FindSignal($"leak flow of {name}") is { } signal ? world.Value(signal) : 0;
                leaks[name] = new(QuantityFormat.Text(size, unit, unit.Symbol == "mm" ? unit.Factor : unit.Factor / 10), QuantityFormat.Text(flow, _flow, _flow.Factor / 10));
            }
        }

        return leaks.ToImmutable();
    }

    private DiagramMachine Machine(World.World world, Item item, Signal running)
    {
        bool runs = world.Value(running) >= 0;
        string throttle = item.Parameters.TryGetValue("throttle", out ParameterValue? control) ? control.Names.FirstOrDefault() ?? control.Text : "";
        string position = _plan.Items.TryGetValue(throttle, out ItemPlan? handle) && handle.Position is { } slot ? handle.Item.Positions[(int)world.GetSlot(slot)] : "";
        string burns = _plan.FindSignal($"consumption of {item.Name}") is { } flow ? QuantityFormat.Text(world.Value(flow), _burn, _burn.Factor) : "";
        return runs ? new(true, position, burns) : new(false, "", position);
    }
}
