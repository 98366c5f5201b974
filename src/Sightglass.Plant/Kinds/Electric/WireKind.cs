using Sightglass.Basics.Quantities;
using Sightglass.Book.Kinds;
using Sightglass.Book.Model;
using Sightglass.Network.Circuits;
using Sightglass.Plant.Circuits;
using Sightglass.Plant.Plans;

namespace Sightglass.Plant.Kinds.Electric;

/// <summary>A conductor at which paths meet.</summary>
public sealed class WireKind : KindBuilder
{
    public override KindSheet Sheet { get; } = new()
    {
        Name = "wire",
        Purpose = "A conductor at which what conducts ends: a pole of a battery, a bar behind breakers, a wire of a control line.",
        Details = """
            It loses nothing and holds nothing; what loses voltage is a cable between two wires. Its insulation lets a little through to the frame, so that a circuit that touches the frame nowhere still has a voltage over it, and a single ground
            moves that voltage without any current to speak of. Source: nodal analysis (any text of circuit theory).
            """,
        Medium = "power",
        Role = KindRole.Wire,
        Symbol = "line",
        Parameters = [Parameter.Of("insulation", Dimension.Resistance, "To the frame.", "1 MOhm", "1 Ohm", "1000 MOhm")],
        Quantities = [ConductorSheet.OverFrame],
        Faults = [new("grounded", "It touches the frame.", [Parameter.Of("resistance", Dimension.Resistance, "Where it touches.", "1 Ohm", "1 mOhm", "1 MOhm")])],
    };

    public override void Declare(PlanBuilder plan, Item item) => ConductorSheet.NameVoltage(plan, item);

    public override void Connect(PlanBuilder plan, Item item)
    {
        CircuitPart part = plan.Circuits.PartOf(item.Name);
        Node node = part.NodeOf(item.Name);
        Slot grounded = plan.Fault(item, "grounded", ("resistance", 1))[0];
        part.Draft.AddResistance($"insulation of {item.Name}", node, part.Frame, item.Get("insulation"));
        part.Draft.AddResistance($"ground of {item.Name}", node, part.Frame, 1, part.Follow(item.Name, s => s[grounded.Index] > 0 ? 1 / s[grounded.Index] : 0));
        part.TellVoltage(ConductorSheet.Volts(plan, item), node, part.Frame);
    }
}
