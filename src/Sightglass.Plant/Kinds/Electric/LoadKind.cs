using Sightglass.Basics.Quantities;
using Sightglass.Book.Kinds;
using Sightglass.Book.Model;
using Sightglass.Network.Circuits;
using Sightglass.Plant.Circuits;
using Sightglass.Plant.Plans;
using Sightglass.Plant.Signals;

namespace Sightglass.Plant.Kinds.Electric;

/// <summary>Whatever takes current and is not looked into further.</summary>
public sealed class LoadKind : KindBuilder
{
    private const string While = "draws while";

    public override KindSheet Sheet { get; } = new()
    {
        Name = "load",
        Purpose = "Takes current: a motor, a heater, a radio, a computer.",
        Details = "R = U²/P at its rated voltage, the same at any other. It works from a voltage on: below, it takes its current and does nothing. Source: Ohm's law.",
        Medium = "power",
        Role = KindRole.Path,
        Conducts = true,
        Symbol = "load",
        Ports = [ConductorSheet.From, ConductorSheet.To],
        Parameters =
        [
            Parameter.Needed("power", Dimension.Power, "What it takes at its rated voltage.", "0.001 W", "10 MW"),
            Parameter.Needed("rated voltage", Dimension.Voltage, "What it is made for.", "0.1 V", "10 kV"),
            Parameter.Of("works from", Dimension.One, "Share of its rated voltage that it needs.", "70 %", "0 %", "100 %"),
            new(While, ParameterType.Formula, Dimension.One, "Where something not in the circuit switches it; always where nothing is written."),
        ],
        Quantities = [ConductorSheet.Voltage, ConductorSheet.Current, ConductorSheet.Consumption, new("working", Dimension.One, "It has the voltage that it needs and takes current.", IsCondition: true)],
        Faults = [ConductorSheet.Open, new("shorted", "It takes all that comes.", [Parameter.Of("resistance", Dimension.Resistance, "Of the short.", "20 mOhm", "0.1 mOhm", "100 Ohm")])],
    };

    public override void Declare(PlanBuilder plan, Item item)
    {
        ConductorSheet.NameBoth(plan, item);
        ConductorSheet.NameConsumption(plan, item);
        double least = item.Get("works from") * item.Get("rated voltage");
        SlotSignal fed = new(ConductorSheet.Amperes(plan, item), ConductorSheet.OhmsOf(item), -least);
        MarginSignal whole = new(new SlotSignal(Shorted(plan, item)), 1e-9, -1);
        plan.Name($"working of {item.Name}", Dimension.One, new AllSignal([fed, whole]), isCondition: true);
    }

    public override void Indicate(PlanBuilder plan, Item item)
    {
        if (plan.Circuits.EndsOf(item) is not { } ends)
        {
            return;
        }

        double ohms = ConductorSheet.OhmsOf(item);
        Slot open = plan.Fault(item, "open", ("", 1))[0];
        Slot shorted = Shorted(plan, item);
        SlotFunction opening = s => s[open.Index] > 0.5 ? 0 : s[shorted.Index] > 0 ? ohms / s[shorted.Index] : 1;
        Signal? margin = WhileCondition.Of(plan, item, While);
        if (margin is null && item.Parameters.ContainsKey(While))
        {
            return;
        }

        Branch branch = ends.Part.Draft.AddResistance(item.Name, ends.From, ends.To, ohms, margin is null ? ends.Part.Follow(item.Name, opening) : ends.Part.Follow(item.Name, margin, opening));
        ConductorSheet.Tell(plan, item, ends, branch);
    }

    private static Slot Shorted(PlanBuilder plan, Item item) => plan.Fault(item, "shorted", ("resistance", 0.02))[0];
}
