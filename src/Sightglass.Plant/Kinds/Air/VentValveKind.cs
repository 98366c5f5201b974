using Sightglass.Basics.Quantities;
using Sightglass.Book.Kinds;
using Sightglass.Book.Model;
using Sightglass.Network.Compile;
using Sightglass.Network.Laws.Gas;
using Sightglass.Plant.Kinds.Paths;
using Sightglass.Plant.Plans;
using Sightglass.Plant.Signals;

namespace Sightglass.Plant.Kinds.Air;

/// <summary>A valve that empties the brake pipe at once when its pressure falls fast.</summary>
public sealed class VentValveKind : KindBuilder
{
    public override KindSheet Sheet { get; } = new()
    {
        Name = "vent valve",
        Purpose = "Opens the brake pipe wide when its pressure falls at an emergency rate, and so hands the emergency on along the train.",
        Details = """
            A small chamber follows the brake pipe through a choke; while it stands above the brake pipe by what trips the valve, the vent is open, until the chamber
            has run down. A service reduction is slow enough for the chamber to follow. Source: ISO 6358; the rest is common practice, no source.
            """,
        Medium = "brake",
        Role = KindRole.Path,
        Symbol = "vent valve",
        Ports = [new("from", "The brake pipe.")],
        Parameters =
        [
            .. PathSheet.Opening,
            Steer.Width,
            Parameter.Of("trips at", Dimension.Pressure, "Chamber over brake pipe.", "6 psi", "0.5 psi", "50 psi"),
            Parameter.Of("chamber", Dimension.Volume, "Of its chamber.", "2 L", "0.05 L", "50 L"),
            Parameter.Of("choke diameter", Dimension.Metre, "Between brake pipe and chamber.", "2 mm", "0.1 mm", "20 mm"),
        ],
        Quantities = [PathSheet.Flow, new("chamber pressure", Dimension.Pressure, "Above the atmosphere.")],
        Faults = [new("stuck", "It does not open.", []), Steer.Passes],
    };

    public override void Declare(PlanBuilder plan, Item item) =>
        GasStore.DeclareChamber(plan, item, ChamberOf(item), item.Get("chamber"), item.From is { } pipe ? plan.Book.Items.GetValueOrDefault(pipe.Item) : null);

    public override void Connect(PlanBuilder plan, Item item)
    {
        Slot stuck = plan.Fault(item, "stuck", ("", 1))[0];
        Slot passes = plan.Fault(item, "passes", ("share", 0.01))[0];
        if (Join.End(plan, item, item.From, "from", null) is not { } pipe || GasPaths.Component(plan, item) is not { } law)
        {
            return;
        }

        StoreEnd chamber = plan.FindStore(ChamberOf(item))!;
        GasStore.StartChamber(plan, chamber, item.Get("chamber"), pipe, $"chamber pressure of {item.Name}");
        GasPaths.Between<GasIso6358>(
            plan, ChamberOf(item), pipe, chamber, GasPaths.OfDiameter(item.Get("choke diameter"), item.Get("discharge coefficient")), n => [plan.Bind(n, _ => 1)]);
        PathHandle vent = GasPaths.Between<GasServo>(
            plan, item.Name, pipe, Join.Outside(plan, $"outside of {item.Name}", pipe),
            GasServo.ParametersOf(law, Steer.WidthOf(item), item.Get("trips at"), 1, 0, 0, Steer.Highest),
            n => [plan.Bind(n, _ => 0), plan.Bind(n, s => 1 - s[stuck.Index]), plan.Bind(n, s => s[passes.Index])],
            pipe.Store.First, chamber.Store.First, chamber.Store.First);
        plan.Name($"flow of {item.Name}", Dimension.VolumeFlow, new FlowSignal(pipe.Network, vent, 1 / FreeAir.Density));
    }

    private static string ChamberOf(Item item) => $"chamber of {item.Name}";
}
