using Sightglass.Basics.Quantities;
using Sightglass.Book.Kinds;
using Sightglass.Book.Model;
using Sightglass.Network.Circuits;
using Sightglass.Plant.Circuits;
using Sightglass.Plant.Kinds.Paths;
using Sightglass.Plant.Plans;

namespace Sightglass.Plant.Kinds.Electric;

/// <summary>What charges a battery and feeds what hangs on it.</summary>
public sealed class ChargerKind : KindBuilder
{
    public override KindSheet Sheet { get; } = new()
    {
        Name = "charger",
        Purpose = "An auxiliary generator with its regulator, or a charger at the wayside: gives current at its voltage, and takes none back.",
        Details = """
            Its voltage falls in a straight line with its current: at its full current it is 12 % lower. A diode lets nothing back. Driven by an engine or a switch it gives full voltage in any position but the first. Source: Ohm's law; the straight line is common practice.
            """,
        Medium = "power",
        Role = KindRole.Path,
        Conducts = true,
        Symbol = "charger",
        Ports = [new("from", "The wire on its minus side."), new("to", "The wire on its plus side.")],
        Parameters =
        [
            Parameter.Needed("volts", Dimension.Voltage, "Without current.", "1 V", "10 kV"),
            Parameter.Needed("full current", Dimension.Ampere, "At which it has given way by 12 %.", "0.1 A", "10000 A"),
            Parameter.Item("driven by", "A switch or an engine that drives it, at full speed in any position but its first, or a transmitter or contactor that tells its speed; always on where there is none."),
        ],
        Quantities = [new("voltage", Dimension.Voltage, "Between its poles."), new("current", Dimension.Ampere, "What it gives.")],
        Faults = [ConductorSheet.Open, new("low", "Its regulator holds too low a voltage.", [Parameter.Of("share", Dimension.One, "Of its voltage, missing.", "15 %", "1 %", "99 %")])],
    };

    public override void Declare(PlanBuilder plan, Item item) => ConductorSheet.NameBoth(plan, item);

    public override void Connect(PlanBuilder plan, Item item)
    {
        if (plan.Circuits.EndsOf(item) is not { } ends)
        {
            return;
        }

        double volts = item.Get("volts");
        double ohms = 0.12 * volts / item.Get("full current");
        SlotFunction speed = Drive.Speed(plan, item);
        SlotFunction whole = ConductorSheet.Whole(plan, item);
        Slot low = plan.Fault(item, "low", ("share", 0.15))[0];
        CircuitPart part = ends.Part;
        Node inside = part.Draft.AddNode($"inside of {item.Name}");
        part.Draft.AddSource(item.Name, ends.From, inside, ohms / 2, part.Follow(item.Name, s => volts * speed(s) * (1 - s[low.Index])));
        Branch branch = part.Draft.AddDiode($"diode of {item.Name}", inside, ends.To, 0, ohms / 2, opening: part.Follow(item.Name, whole));
        part.TellVoltage(ConductorSheet.Volts(plan, item), ends.To, ends.From);
        part.TellCurrent(ConductorSheet.Amperes(plan, item), branch);
    }
}
