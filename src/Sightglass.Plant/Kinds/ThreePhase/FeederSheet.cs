using Sightglass.Basics.Quantities;
using Sightglass.Book.Kinds;
using Sightglass.Book.Model;
using Sightglass.Plant.Plans;
using Sightglass.Plant.Signals;

namespace Sightglass.Plant.Kinds.ThreePhase;

/// <summary>What the kinds of three phases have in common.</summary>
internal static class FeederSheet
{
    /// <summary>V from which a touch counts as dangerous (common practice, no source; local rules decide).</summary>
    public const double Dangerous = 50;

    public static readonly KindPort From = new("from", "The busbar on its side of the source.");

    public static readonly KindPort To = new("to", "The busbar on its side of the loads.");

    public static readonly KindQuantity Current = new("current", Dimension.Ampere, "The greatest of its three phases.");

    public static readonly KindFault Open = new("open", "It conducts nothing.", []);

    public static readonly KindFault OpenPhase = new("open phase", "One of its phases is broken.", [PhaseValue("Its number.")]);

    public static KindParameter PhaseValue(string doc) => Parameter.Whole("phase", doc, "1", "1", "3");

    /// <summary>1 while nothing says that it is open.</summary>
    public static SlotFunction Whole(PlanBuilder plan, Item item)
    {
        Slot open = plan.Fault(item, "open", ("", 1))[0];
        return s => s[open.Index] > 0.5 ? 0 : 1;
    }

    public static Slot Amperes(PlanBuilder plan, Item item) => plan.SlotNamed($"current of {item.Name}");

    public static Slot OpenPhaseOf(PlanBuilder plan, Item item) => plan.Fault(item, "open phase", ("phase", 1))[0];

    /// <summary>Mean voltage between the phases of a busbar.</summary>
    public static Slot LineVolts(PlanBuilder plan, string bus) => plan.SlotNamed($"voltage of {bus}");

    /// <summary>What a meter between any two of its bars, or one and the frame, shows at most.</summary>
    public static Slot GreatestVolts(PlanBuilder plan, string bus) => plan.SlotNamed($"greatest voltage of {bus}");

    public static void NameCurrent(PlanBuilder plan, Item item) => plan.Name($"current of {item.Name}", Dimension.Ampere, new SlotSignal(Amperes(plan, item)));
}
