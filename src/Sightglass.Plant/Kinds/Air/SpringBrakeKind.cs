using Sightglass.Basics.Quantities;
using Sightglass.Book.Kinds;
using Sightglass.Book.Model;
using Sightglass.Network.Laws.Common;
using Sightglass.Plant.Plans;
using Sightglass.Plant.Signals;

namespace Sightglass.Plant.Kinds.Air;

/// <summary>A parking brake that a spring applies and air releases.</summary>
public sealed class SpringBrakeKind : KindBuilder
{
    private const string NotHeldBack = "not held back";

    public override KindSheet Sheet { get; } = new()
    {
        Name = "spring brake",
        Purpose = "A parking brake: a spring applies it as its air falls, air releases it; it holds without air and drags where air is lost under way.",
        Details = """
            Force = spring force·(1 − p/(pressure at which it begins)), never below zero; p is the pressure in its chamber, with anti-compounding the higher of that and of the service brake's
            cylinder, so that the two do not add. Released by hand it presses nothing until its air has come back. Source: a spring against a piston, its rate taken as constant; common
            practice, no source.
            """,
        Medium = "brake",
        Role = KindRole.Store,
        Symbol = "cylinder",
        Parameters =
        [
            Parameter.Needed("volume", Dimension.Volume, "Of its chamber.", "0.05 L", "100 L"),
            Parameter.Needed("spring force", Dimension.Force, "With which it presses when there is no air in it.", "100 N", "1000000 N"),
            Parameter.Needed("begins at", Dimension.Pressure, "Over the atmosphere: below this it begins to press.", "5 psi", "200 psi"),
            Parameter.Item("anti-compounded by", "The brake cylinder whose air also holds the spring back; without one both forces add."),
            AirSheet.StartPressure,
        ],
        Quantities =
        [
            .. AirSheet.Quantities,
            new("force", Dimension.Force, "With which its spring presses."),
            new("applied", Dimension.One, "It presses.", IsCondition: true),
        ],
        Faults = [AirSheet.Leak, new("broken spring", "It presses nothing, whatever its air.", []), new(NotHeldBack, "Air of the service brake does not hold it back: both forces add.", [])],
    };

    public override Fluid? Holds => Fluid.Gas;

    /// <summary>1 while a person has released it by hand.</summary>
    internal static Slot ReleasedByHand(PlanBuilder plan, Item brake) => plan.SlotNamed($"released by hand of {brake.Name}");

    public override void Declare(PlanBuilder plan, Item item) => GasStore.Declare(plan, item, item.Get("volume"), exponent: 1);

    public override void Connect(PlanBuilder plan, Item item)
    {
        GasStore.Leak(plan, item);
        Slot broken = plan.Fault(item, "broken spring", ("", 1))[0];
        Slot alone = plan.Fault(item, NotHeldBack, ("", 1))[0];
        if (plan.FindStore(item.Name) is not { } chamber)
        {
            return;
        }

        StoreEnd? cylinder = null;
        if (item.Parameters.ContainsKey("anti-compounded by") && (cylinder = GasStore.Named(plan, item, "anti-compounded by")) is null)
        {
            return;
        }

        double begins = Physical.Atmosphere + item.Get("begins at");
        double perPascal = item.Get("spring force") / item.Get("begins at");
        SpringSignal force = new(chamber.Network, chamber.Store.First, (cylinder ?? chamber).Store.First, begins, perPascal, ReleasedByHand(plan, item), broken, alone);
        plan.Name($"force of {item.Name}", Dimension.Force, force);
        plan.Name($"applied of {item.Name}", Dimension.One, new AtLeastSignal(force, perPascal), isCondition: true);
    }
}
