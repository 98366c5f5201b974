using System.Collections.Immutable;
using Sightglass.Book.Kinds;
using Sightglass.Book.Model;
using Sightglass.Drawing.Ladder;
using Sightglass.Plant.Plans;
using Sightglass.Plant.Signals;

namespace Sightglass.Web.Live;

/// <summary>Reads the state of circuits from a world with a state in view.</summary>
internal sealed class CircuitLook
{
    private readonly ImmutableArray<(string Name, Signal Volts)> _wires;
    private readonly ImmutableArray<(string Name, Signal Amperes)> _currents;
    private readonly ImmutableArray<(string Name, Signal Made)> _moving;
    private readonly ImmutableArray<(string Name, Signal At)> _working;

    public CircuitLook(Plan plan)
    {
        ImmutableArray<Item> items = [.. plan.Book.Items.Values.Where(i => !i.Kind.Alternates && (i.Kind.Conducts || i.Kind.Role == KindRole.Wire))];
        _wires = Named(plan, items.Where(i => i.Kind.Role == KindRole.Wire), "voltage");
        _currents = Named(plan, items.Where(i => i.Kind.Conducts), "current");
        _moving = [.. Named(plan, items, "closed"), .. Named(plan, items, "on")];
        _working = [.. new[] { "lit", "picked up", "working", "cranking" }.SelectMany(q => Named(plan, items.Where(i => i.Kind.Conducts), q))];
    }

    public LadderState Look(World.World world) => _currents.IsEmpty ? LadderState.Still : new()
    {
        Volts = _wires.ToImmutableDictionary(w => w.Name, w => world.Value(w.Volts), StringComparer.Ordinal),
        Amperes = _currents.ToImmutableDictionary(c => c.Name, c => world.Value(c.Amperes), StringComparer.Ordinal),
        Made = [.. _moving.Where(m => world.Value(m.Made) >= 0).Select(m => m.Name)],
        At = [.. _working.Where(w => world.Value(w.At) >= 0).Select(w => w.Name)],
    };

    private static ImmutableArray<(string, Signal)> Named(Plan plan, IEnumerable<Item> items, string quantity) =>
        [.. items.Select(i => (i.Name, Signal: plan.FindSignal($"{quantity} of {i.Name}"))).Where(s => s.Signal is not null).Select(s => (s.Name, s.Signal!))];
}
