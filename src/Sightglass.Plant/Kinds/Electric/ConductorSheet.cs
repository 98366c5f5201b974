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

    public static readonly KindQuantity Consumption = new("consumption", Dimension.Power, "What it takes.");

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

    /// <summary>Gives what it tells names in formulas: in the first pass, so that facts and conditions may speak of it before it is built.</summary>
    public static void NameVoltage(PlanBuilder plan, Item item) => plan.Name($"voltage of {item.Name}", Dimension.Voltage, new SlotSignal(Volts(plan, item)));

    public static void NameBoth(PlanBuilder plan, Item item)
    {
        NameVoltage(plan, item);
        plan.Name($"current of {item.Name}", Dimension.Ampere, new SlotSignal(Amperes(plan, item)));
    }

    public static Slot Volts(PlanBuilder plan, Item item) => plan.SlotNamed($"voltage of {item.Name}");

    public static Slot Amperes(PlanBuilder plan, Item item) => plan.SlotNamed($"current of {item.Name}");

    /// <summary>Has the circuit tell the voltage of its ends and the current of a branch.</summary>
    public static void Tell(PlanBuilder plan, Item item, CircuitEnds ends, Branch branch)
    {
        ends.Part.TellVoltage(Volts(plan, item), ends.From, ends.To);
        ends.Part.TellCurrent(Amperes(plan, item), branch);
    }

    public static void NameConsumption(PlanBuilder plan, Item item) =>
        plan.Name($"consumption of {item.Name}", Dimension.Power, new ProductSignal(new SlotSignal(Volts(plan, item)), new SlotSignal(Amperes(plan, item))));
}
