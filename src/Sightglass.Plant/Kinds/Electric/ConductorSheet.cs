using Sightglass.Basics.Quantities;
using Sightglass.Book.Kinds;
using Sightglass.Book.Model;
using Sightglass.Network.Circuits;
using Sightglass.Plant.Circuits;
using Sightglass.Plant.Plans;
using Sightglass.Plant.Signals;

namespace Sightglass.Plant.Kinds.Electric;

/// <summary>What the kinds that conduct have in common.</summary>
internal static class ConductorSheet
{
    public static readonly KindQuantity OverFrame = new("voltage", Dimension.Voltage, "Over the frame.");

    public static readonly KindQuantity Voltage = new("voltage", Dimension.Voltage, "Of its first end over its second.");

    public static readonly KindQuantity Current = new("current", Dimension.Ampere, "From its first end to its second.");

    public static readonly KindQuantity Power = new("power", Dimension.Power, "What it takes.");

    public static readonly KindFault Open = new("open", "It conducts nothing.", []);

    public static readonly KindPort From = new("from", "The wire on its plus side, or `frame`.");

    public static readonly KindPort To = new("to", "The wire on its minus side, or `frame`.");

    /// <summary>Ω of what takes a power at a voltage.</summary>
    public static double OhmsOf(Item item) => item.Get("rated voltage") * item.Get("rated voltage") / item.Get("power");

    /// <summary>Opening of a fault: 0 while it is there.</summary>
    public static SlotFunction Whole(PlanBuilder plan, Item item, string fault = "open")
    {
        Slot open = plan.Fault(item, fault, ("", 1))[0];
        return s => s[open.Index] > 0.5 ? 0 : 1;
    }

    /// <summary>Gives the voltage between two nodes a slot and a name.</summary>
    public static Slot TellVoltage(PlanBuilder plan, Item item, CircuitPart part, Node plus, Node minus)
    {
        Slot volts = plan.SlotNamed($"voltage of {item.Name}");
        part.TellVoltage(volts, plus, minus);
        plan.Name($"voltage of {item.Name}", Dimension.Voltage, new SlotSignal(volts));
        return volts;
    }

    /// <summary>Gives the voltage and the current of a branch their slots and names.</summary>
    public static (Slot Volts, Slot Amperes) Tell(PlanBuilder plan, Item item, CircuitEnds ends, Branch branch)
    {
        Slot volts = TellVoltage(plan, item, ends.Part, ends.From, ends.To);
        return (volts, TellCurrent(plan, item, ends, branch));
    }

    public static Slot TellCurrent(PlanBuilder plan, Item item, CircuitEnds ends, Branch branch)
    {
        Slot amperes = plan.SlotNamed($"current of {item.Name}");
        ends.Part.TellCurrent(amperes, branch);
        plan.Name($"current of {item.Name}", Dimension.Ampere, new SlotSignal(amperes));
        return amperes;
    }

    public static void NamePower(PlanBuilder plan, Item item, Slot volts, Slot amperes) =>
        plan.Name($"power of {item.Name}", Dimension.Power, new ProductSignal(new SlotSignal(volts), new SlotSignal(amperes)));
}
