using Sightglass.Basics.Quantities;
using Sightglass.Book.Kinds;
using Sightglass.Book.Model;
using Sightglass.Network.Laws.Common;
using Sightglass.Plant.Kinds.Paths;
using Sightglass.Plant.Plans;
using Sightglass.Plant.Signals;

namespace Sightglass.Plant.Kinds.Air;

/// <summary>A pressure switch that loads and unloads compressors.</summary>
public sealed class GovernorKind : KindBuilder
{
    public override KindSheet Sheet { get; } = new()
    {
        Name = "governor",
        Purpose = "Loads compressors when a pressure has fallen, and unloads them when it has risen.",
        Details = "It tells 1 from the moment the pressure falls to where it cuts in, and 0 from the moment it rises to where it cuts out. Source: hysteresis, derived.",
        Medium = "control",
        Role = KindRole.Signal,
        Symbol = "governor",
        Parameters =
        [
            Parameter.Item("senses", "The store whose pressure counts.", required: true),
            Parameter.Needed("cuts in", Dimension.Pressure, "Loads when the pressure falls to this.", "1 psi", "500 psi"),
            Parameter.Needed("cuts out", Dimension.Pressure, "Unloads when the pressure rises to this.", "1 psi", "500 psi"),
        ],
        Quantities = [new("told", Dimension.One, "1 while it loads, 0 while it does not."), new("loading", Dimension.One, "It has its compressors pump.", IsCondition: true)],
        Faults = [new("stuck", "It stays as it is, loading or not.", [])],
    };

    public override void Declare(PlanBuilder plan, Item item)
    {
        Slot told = plan.SlotNamed($"told by {item.Name}", 1);
        plan.Name($"told of {item.Name}", Dimension.One, new SlotSignal(told));
        plan.Name($"loading of {item.Name}", Dimension.One, new SlotSignal(told, 1, -0.5), isCondition: true);
        plan.AddStart(new($"loading of {item.Name}", Dimension.One, -1, default, null, told, ["no", "yes"]));
        plan.Fault(item, "stuck", ("", 1));
    }

    public override void Connect(PlanBuilder plan, Item item)
    {
        if (GasStore.Named(plan, item, "senses") is not { } store)
        {
            return;
        }

        double low = item.Get("cuts in") + Physical.Atmosphere;
        double high = item.Get("cuts out") + Physical.Atmosphere;
        if (low >= high)
        {
            plan.Found.Error("P020", item.Parameters["cuts in"].Span, $"`{item.Name}` cuts in at or above where it cuts out", "let it cut in lower than it cuts out");
            return;
        }

        Slot told = Told.By(plan, item);
        Slot stuck = plan.PlanOf(item).Faults["stuck"][0].Slot;
        plan.AddSwitch(new(
            $"{item.Name} unloads.", store.Network, new PotentialSignal(store.Network, store.Store.First, 1, -high), s => s[told.Index] > 0.5 && s[stuck.Index] < 0.5, told, new ConstantSignal(0)));
        plan.AddSwitch(new(
            $"{item.Name} loads.", store.Network, new PotentialSignal(store.Network, store.Store.First, -1, low), s => s[told.Index] < 0.5 && s[stuck.Index] < 0.5, told, new ConstantSignal(1)));
    }
}
