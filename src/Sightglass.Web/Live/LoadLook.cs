using System.Collections.Immutable;
using Sightglass.Book.Model;
using Sightglass.Drawing.Loads;
using Sightglass.Plant.Plans;
using Sightglass.Plant.Signals;

namespace Sightglass.Web.Live;

/// <summary>Reads what wheels carry from a world with a state in view.</summary>
internal sealed class LoadLook
{
    private readonly Plan _plan;
    private readonly ImmutableArray<(LoadWheel Wheel, Signal Load)> _wheels;
    private readonly ImmutableArray<(LoadWheel Wheel, Item Scale)> _scales;
    private readonly ImmutableArray<(string Name, Signal Mass)> _masses;
    private readonly ImmutableArray<ItemPlan> _springs;

    public LoadLook(Plan plan)
    {
        _plan = plan;
        Item[] items = [.. plan.Book.ItemsInOrder];
        ILookup<string, Item> axles = items.Where(i => i.Kind.Name == "axle").ToLookup(i => i.Name);
        (LoadWheel Wheel, string Load)[] wheels = [.. axles.SelectMany(a => new[] { (new LoadWheel(a.Key, true), $"right wheel load of {a.Key}"), (new LoadWheel(a.Key, false), $"left wheel load of {a.Key}") })];
        _wheels = [.. wheels.Select(w => (w.Wheel, Load: plan.FindSignal(w.Load))).Where(w => w.Load is not null).Select(w => (w.Wheel, w.Load!))];
        _scales = [.. from gauge in items
                      where gauge.Reading is not null && plan.Items.TryGetValue(gauge.Name, out ItemPlan? p) && p.Shown is not null
                      from wheel in wheels
                      where axles[wheel.Wheel.Axle].First().Vehicle.Index == gauge.Vehicle.Index && Shows(gauge, wheel.Load)
                      select (wheel.Wheel, gauge)];
        _masses = [.. items.Where(i => i.Parameters.ContainsKey("lies on")).Select(i => (i.Name, Mass: plan.FindSignal($"mass of {i.Name}"))).Where(m => m.Mass is not null).Select(m => (m.Name, m.Mass!))];
        _springs = [.. items.Where(i => i.Kind.Name == "spring").Select(i => plan.Items[i.Name])];
    }

    public LoadState Look(World.World world) => _wheels.IsEmpty ? LoadState.Unknown : new()
    {
        Real = _wheels.ToImmutableDictionary(w => w.Wheel, w => world.Value(w.Load)),
        Read = _scales.Select(s => (s.Wheel, Load: world.Read(s.Scale))).Where(s => s.Load is not null).ToImmutableDictionary(s => s.Wheel, s => s.Load!.Value),
        Masses = _masses.ToImmutableDictionary(m => m.Name, m => world.Value(m.Mass), StringComparer.Ordinal),
        Wrong = _springs.Select(s => (s.Item.Name, Fault: s.Faults.Where(f => f.Value.Length > 0 && world.GetSlot(f.Value[0].Slot) != 0).Select(f => f.Key).FirstOrDefault()))
            .Where(s => s.Fault is not null).ToImmutableSortedDictionary(s => s.Name, s => s.Fault!, StringComparer.Ordinal),
    };

    // A formula speaks in the names of its own vehicle.
    private static bool Shows(Item gauge, string load)
    {
        string suffix = gauge.Vehicle.IsTheMachine ? "" : gauge.Vehicle.NameOf("");
        return gauge.Reading!.Formula == (suffix.Length > 0 ? load.Replace(suffix, "", StringComparison.Ordinal) : load);
    }
}
