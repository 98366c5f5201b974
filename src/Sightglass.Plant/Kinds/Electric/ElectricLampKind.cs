using System.Collections.Immutable;
using Sightglass.Basics.Quantities;
using Sightglass.Book.Kinds;
using Sightglass.Book.Model;
using Sightglass.Network.Circuits;
using Sightglass.Plant.Circuits;
using Sightglass.Plant.Plans;
using Sightglass.Plant.Signals;

namespace Sightglass.Plant.Kinds.Electric;

/// <summary>A lamp in a circuit.</summary>
public sealed class ElectricLampKind : KindBuilder
{
    /// <summary>(U/U₀)^3.4 by straight lines: how bright a filament is (rule of the trade, from memory).</summary>
    private static readonly ImmutableArray<(double X, double Y)> s_brightness = [(0, 0), (0.4, 0.044), (0.6, 0.176), (0.8, 0.468), (0.9, 0.699), (1, 1), (1.1, 1.383)];

    public override KindSheet Sheet { get; } = new()
    {
        Name = "electric lamp",
        Purpose = "A lamp that is lit by the voltage that comes to it.",
        Details = """
            R = U²/P at its rated voltage, taken as the same at any other. How bright it is goes with (U/U₀)^3.4; from a share of its light on it is seen to be lit. Source: exponent of incandescent lamps (rule of the
            trade, from memory).
            """,
        Medium = "power",
        Role = KindRole.Indication,
        Conducts = true,
        Symbol = "lamp",
        Lights = true,
        Ports = [ConductorSheet.From, ConductorSheet.To],
        Parameters =
        [
            Parameter.Needed("power", Dimension.Power, "At its rated voltage.", "0.01 W", "10 kW"),
            Parameter.Needed("rated voltage", Dimension.Voltage, "What it is made for.", "0.1 V", "1 kV"),
            Parameter.Of("seen from", Dimension.One, "Share of its light from which it is seen to be lit: one of two in a row has a tenth.", "20 %", "0.1 %", "100 %"),
        ],
        Quantities = [ConductorSheet.Voltage, ConductorSheet.Current, ConductorSheet.Consumption, new("brightness", Dimension.One, "Share of its light at its rated voltage."), new("lit", Dimension.One, "It is seen to be lit.", IsCondition: true)],
        Faults = [new("burnt out", "Its filament is broken.", []), new("shorted", "Its holder is shorted.", [Parameter.Of("resistance", Dimension.Resistance, "Of the short.", "100 mOhm", "0.1 mOhm", "100 Ohm")])],
    };

    public override void Declare(PlanBuilder plan, Item item)
    {
        ConductorSheet.NameBoth(plan, item);
        ConductorSheet.NameConsumption(plan, item);
        LineSignal brightness = new(new SlotSignal(ConductorSheet.Volts(plan, item), 1 / item.Get("rated voltage")), s_brightness);
        MarginSignal whole = new(new SumSignal([new SlotSignal(BurntOut(plan, item)), new SlotSignal(Shorted(plan, item))]), 1e-9, -1);
        AllSignal lit = new([new MarginSignal(brightness, item.Get("seen from"), 1), whole]);
        plan.Name($"brightness of {item.Name}", Dimension.One, brightness);
        plan.Name($"lit of {item.Name}", Dimension.One, lit, isCondition: true);
        plan.Update(plan.PlanOf(item) with { Lit = lit });
    }

    public override void Connect(PlanBuilder plan, Item item)
    {
        if (plan.Circuits.EndsOf(item) is not { } ends)
        {
            return;
        }

        double ohms = ConductorSheet.OhmsOf(item);
        Slot broken = BurntOut(plan, item);
        Slot shorted = Shorted(plan, item);
        Branch branch = ends.Part.Draft.AddResistance(
            item.Name, ends.From, ends.To, ohms, ends.Part.Follow(item.Name, s => s[shorted.Index] > 0 ? ohms / s[shorted.Index] : s[broken.Index] > 0.5 ? 0 : 1));
        ConductorSheet.Tell(plan, item, ends, branch);
    }

    private static Slot BurntOut(PlanBuilder plan, Item item) => plan.Fault(item, "burnt out", ("", 1))[0];

    private static Slot Shorted(PlanBuilder plan, Item item) => plan.Fault(item, "shorted", ("resistance", 0.1))[0];
}
