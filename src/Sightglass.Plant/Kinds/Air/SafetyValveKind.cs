using Sightglass.Basics.Quantities;
using Sightglass.Book.Kinds;
using Sightglass.Book.Model;
using Sightglass.Network.Laws.Common;
using Sightglass.Network.Laws.Gas;
using Sightglass.Plant.Kinds.Paths;
using Sightglass.Plant.Plans;
using Sightglass.Plant.Signals;

namespace Sightglass.Plant.Kinds.Air;

/// <summary>A valve that pops open at a pressure and blows until it has fallen.</summary>
public sealed class SafetyValveKind : KindBuilder
{
    public override KindSheet Sheet { get; } = new()
    {
        Name = "safety valve",
        Purpose = "Pops open at a pressure and blows to the outside until the pressure has fallen by its blow-down.",
        Details = "Shut or fully open, as an orifice. Source: hysteresis, derived; the opening as for the orifice.",
        Medium = "main",
        Role = KindRole.Path,
        Symbol = "relief",
        Ports = [new("from", "The store it guards.")],
        Parameters =
        [
            .. PathSheet.Opening,
            Parameter.Needed("opens at", Dimension.Pressure, "Over the atmosphere.", "1 psi", "1000 psi"),
            Parameter.Of("blow-down", Dimension.Pressure, "How far the pressure falls before it shuts.", "8 psi", "0.5 psi", "100 psi"),
        ],
        Quantities = [PathSheet.Flow, new("blowing", Dimension.One, "It stands open.", IsCondition: true)],
        Faults =
        [
            new("stuck", "It stays as it is, shut or open.", []),
            new("passes", "Shut, it still lets a share through.", [Parameter.Of("share", Dimension.One, "Of the open flow.", "2 %", "0.1 %", "100 %")]),
        ],
    };

    public override void Declare(PlanBuilder plan, Item item)
    {
        Slot open = plan.SlotNamed($"blowing of {item.Name}");
        plan.Name($"blowing of {item.Name}", Dimension.One, new SlotSignal(open, 1, -0.5), isCondition: true);
    }

    public override void Connect(PlanBuilder plan, Item item)
    {
        Slot open = plan.SlotNamed($"blowing of {item.Name}");
        Slot stuck = plan.Fault(item, "stuck", ("", 1))[0];
        Slot passes = plan.Fault(item, "passes", ("share", 0.02))[0];
        if (Join.End(plan, item, item.From, "from", null) is not { } from || GasPaths.Component(plan, item) is not { } law)
        {
            return;
        }

        StoreEnd outside = Join.Outside(plan, $"outside of {item.Name}", from);
        var path = GasPaths.Between<GasIso6358>(plan, item.Name, from, outside, law, n => [plan.Bind(n, s => Math.Max(s[open.Index], s[passes.Index]))]);
        plan.Name($"flow of {item.Name}", Dimension.VolumeFlow, new FlowSignal(from.Network, path, 1 / FreeAir.Density));
        double high = item.Get("opens at") + Physical.Atmosphere;
        double low = high - item.Get("blow-down");
        plan.AddSwitch(new(
            $"{item.Name} pops open.", from.Network, new PotentialSignal(from.Network, from.Store.First, 1, -high), s => s[open.Index] < 0.5 && s[stuck.Index] < 0.5, open, new ConstantSignal(1)));
        plan.AddSwitch(new(
            $"{item.Name} shuts.", from.Network, new PotentialSignal(from.Network, from.Store.First, -1, low), s => s[open.Index] > 0.5 && s[stuck.Index] < 0.5, open, new ConstantSignal(0)));
    }
}
