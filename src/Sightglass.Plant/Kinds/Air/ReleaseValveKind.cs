using Sightglass.Basics.Quantities;
using Sightglass.Book.Kinds;
using Sightglass.Book.Model;
using Sightglass.Network.Compile;
using Sightglass.Network.Laws.Gas;
using Sightglass.Plant.Kinds.Paths;
using Sightglass.Plant.Plans;
using Sightglass.Plant.Signals;

namespace Sightglass.Plant.Kinds.Air;

/// <summary>The valve by which a person lets a vehicle's brake off without the brake pipe.</summary>
public sealed class ReleaseValveKind : KindBuilder
{
    private const string LetsDown = "lets down";

    public override KindSheet Sheet { get; } = new()
    {
        Name = "release valve",
        Purpose = "Lets off by hand a brake that the brake pipe does not let off: a car set aside, or one charged higher than the pipe now stands.",
        Details = """
            Open, an orifice from what a control valve compares the brake pipe with: its reference volume, with direct release the auxiliary reservoir. Once that stands no higher than
            the brake pipe the control valve releases by itself. Source: as for the orifice; the method is common practice, no source.
            """,
        Medium = "brake",
        Role = KindRole.Control,
        Symbol = "valve",
        Positions = ["closed", "open"],
        Parameters =
        [
            Parameter.Item(LetsDown, "The control valve whose pressure to compare with it lets down.", required: true),
            Parameter.Needed("diameter", Dimension.Metre, "Of its opening.", "0.1 mm", "50 mm"),
        ],
        Quantities = [new("flow", Dimension.VolumeFlow, "Free air that it blows.")],
        Faults = [new("stuck", "It does not move from where it stands.", [])],
    };

    public override void Declare(PlanBuilder plan, Item item)
    {
        plan.PositionSlot(item);
        plan.JamFault(item);
    }

    public override void Connect(PlanBuilder plan, Item item)
    {
        if (GasStore.ItemNamed(plan, item, LetsDown) is not { } control || ControlValveKind.ComparedWith(plan, control) is not { } store)
        {
            plan.Found.Error("P027", item.Parameters.GetValueOrDefault(LetsDown)?.Span ?? item.Span, $"`{item.Name}` lets down what is no control valve", "name an item of the kind `control valve`");
            return;
        }

        Slot position = plan.PositionSlot(item);
        PathHandle path = GasPaths.Between<GasIso6358>(
            plan, item.Name, store, Join.Outside(plan, $"outside of {item.Name}", store), GasPaths.OfDiameter(item.Get("diameter")),
            n => [plan.Bind(n, s => s[position.Index] > 0.5 ? 1 : 0)]);
        plan.Name($"flow of {item.Name}", Dimension.VolumeFlow, new FlowSignal(store.Network, path, 1 / FreeAir.Density));
    }
}
