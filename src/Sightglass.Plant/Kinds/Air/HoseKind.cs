using Sightglass.Basics.Quantities;
using Sightglass.Book.Kinds;
using Sightglass.Book.Model;
using Sightglass.Network.Compile;
using Sightglass.Network.Laws.Gas;
using Sightglass.Plant.Kinds.Paths;
using Sightglass.Plant.Plans;
using Sightglass.Plant.Signals;

namespace Sightglass.Plant.Kinds.Air;

/// <summary>An air hose at the end of a vehicle.</summary>
public sealed class HoseKind : KindBuilder
{
    public override KindSheet Sheet { get; } = new()
    {
        Name = "hose",
        Purpose = "An air hose at the end of a vehicle, behind its angle cock: open at its head while nothing is coupled to it.",
        Details = """
            p·V = m·R·T at 20 °C, and an orifice from its head to the outside; what is coupled to it decides how far the head stands open. Burst, it is open by its own
            cross-section. Source: ideal gas law; the opening as for the orifice.
            """,
        Medium = "brake",
        Role = KindRole.Store,
        Symbol = "line",
        CoupledBy = "hose coupling",
        Parameters =
        [
            Parameter.Needed("length", Dimension.Metre, "Of the hose with its coupling head.", "1 cm", "20 m"),
            Parameter.Needed("diameter", Dimension.Metre, "Inside.", "1 mm", "0.3 m"),
            Parameter.Of("head diameter", Dimension.Metre, "Of the opening of its head; that of the hose where nothing is written.", least: "1 mm", most: "0.3 m"),
            AirSheet.StartPressure,
        ],
        Quantities =
        [
            .. AirSheet.Quantities,
            new("head flow", Dimension.VolumeFlow, "Free air that blows out of its open head."),
        ],
        Faults = [AirSheet.Leak, new("burst", "It is torn through; what feeds it blows to the outside.", [])],
    };

    public override Fluid? Holds => Fluid.Gas;

    public override void Declare(PlanBuilder plan, Item item)
    {
        double diameter = item.Get("diameter");
        GasStore.Declare(plan, item, item.Get("length") * Math.PI * diameter * diameter / 4, exponent: 1);
    }

    public override void Connect(PlanBuilder plan, Item item)
    {
        double diameter = item.Get("diameter");
        Slot burst = plan.Fault(item, "burst", ("", 1))[0];
        GasStore.Leak(plan, item, s => s[burst.Index] * diameter * diameter);
        if (plan.FindStore(item.Name) is not { } inside)
        {
            return;
        }

        string name = $"head of {item.Name}";
        PathHandle head = GasPaths.Between<GasIso6358>(
            plan, name, inside, Join.Outside(plan, name, inside), GasPaths.OfDiameter(item.Find("head diameter") ?? diameter), n => [plan.Bind(n, plan.HeadOpening(item))]);
        plan.Name($"head flow of {item.Name}", Dimension.VolumeFlow, new FlowSignal(inside.Network, head, 1 / FreeAir.Density));
    }
}
