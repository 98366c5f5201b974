using System.Collections.Immutable;
using Sightglass.Basics.Quantities;
using Sightglass.Book.Kinds;
using Sightglass.Book.Model;
using Sightglass.Drawing.Diagram;
using Sightglass.Plant.Plans;
using Sightglass.Plant.Signals;

namespace Sightglass.Web.Live;

/// <summary>Reads a world, while it lets itself be looked at, into a <see cref="MachineSnapshot"/>.</summary>
public sealed class Sampler
{
    /// <summary>How far back a trace reaches, simulated seconds.</summary>
    public const double TraceSeconds = 1800;

    private const double TraceStep = 5;
    private const int MostLines = 200;

    private readonly Plan _plan;
    private readonly DiagramLook _diagram;
    private readonly CircuitLook _circuit;
    private readonly LoadLook _loads;
    private readonly ImmutableArray<string> _inputs;

    public Sampler(Plan plan)
    {
        ArgumentNullException.ThrowIfNull(plan);
        _plan = plan;
        _diagram = new(plan);
        _circuit = new(plan);
        _loads = new(plan);
        Gauges = GaugeChoice.Of(plan);
        Along = AlongTrain.Of(plan);
        _inputs = [.. WorldInput.All.Select(i => i.Name).Where(n => plan.Starts.TryGetValue(n, out StartRule? rule) && rule.Network < 0)];
    }

    /// <summary>The scales at the side.</summary>
    public ImmutableArray<LiveGauge> Gauges { get; }

    /// <summary>Lines that go through the train, one for each system that has one; none for a machine alone.</summary>
    public ImmutableArray<AlongTrain> Along { get; }

    internal MachineSnapshot Empty { get; } = new();

    /// <summary>What is seen now.</summary>
    /// <param name="world">With a state in view.</param>
    /// <param name="before">What was seen last: traces and lines go on.</param>
    public MachineSnapshot Look(World.World world, MachineSnapshot before)
    {
        ArgumentNullException.ThrowIfNull(world);
        ArgumentNullException.ThrowIfNull(before);
        ImmutableArray<GaugeLook> gauges = [.. Gauges.Select(g => Look(world, g))];
        double now = world.Now.Seconds;
        return before with
        {
            Number = before.Number + 1,
            Now = world.Now,
            Diagram = _diagram.Look(world),
            Circuit = _circuit.Look(world),
            Loads = _loads.Look(world),
            Positions = Positions(world),
            Gauges = gauges,
            Trace = Longer(before.Trace, new(now, gauges)),
            Along = AlongNow(world, before),
            Journal = world.Journal is { } journal && (journal.Count != before.Journal.Length || before.Journal.IsEmpty) ? [.. journal.TakeLast(MostLines)] : before.Journal,
            Faults = [.. PresentFault.Of(world)],
            Inputs = _inputs.ToImmutableSortedDictionary(n => n, n => world.GetSlot(_plan.Starts[n].Slot), StringComparer.Ordinal),
        };
    }

    /// <summary>What was seen last with only the pressures along the train looked at again.</summary>
    public MachineSnapshot LookAlong(World.World world, MachineSnapshot before)
    {
        ArgumentNullException.ThrowIfNull(world);
        ArgumentNullException.ThrowIfNull(before);
        return before with { Along = AlongNow(world, before) };
    }

    private ImmutableArray<ImmutableArray<AlongPoint>> AlongNow(World.World world, MachineSnapshot before) =>
        [.. Along.Select((a, i) => a.Longer(i < before.Along.Length ? before.Along[i] : [], world))];

    private static ImmutableArray<TracePoint> Longer(ImmutableArray<TracePoint> trace, TracePoint point)
    {
        if (!trace.IsEmpty && point.Seconds - trace[^1].Seconds < TraceStep - 1e-6)
        {
            return trace;
        }

        int old = 0;
        while (old < trace.Length && trace[old].Seconds < point.Seconds - TraceSeconds)
        {
            old++;
        }

        return old == 0 ? trace.Add(point) : trace.RemoveRange(0, old).Add(point);
    }

    private static GaugeLook Look(World.World world, LiveGauge gauge)
    {
        double truth = 0;
        foreach (Signal signal in gauge.Truths)
        {
            truth += world.Value(signal);
        }

        return new(gauge.Item is null ? null : world.Read(gauge.Item), truth / gauge.TruthDivisor, gauge.Air is { } air ? world.Value(air) : null);
    }

    private ImmutableSortedDictionary<string, string> Positions(World.World world) =>
        _plan.Items.Values.Where(i => i.Position is not null && i.Item.Positions.Length > 0)
            .ToImmutableSortedDictionary(i => i.Item.Name, i => i.Item.Positions[(int)world.GetSlot(i.Position!.Value)], StringComparer.Ordinal);
}
