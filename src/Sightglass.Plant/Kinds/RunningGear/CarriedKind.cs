using System.Collections.Immutable;
using Sightglass.Basics.Quantities;
using Sightglass.Book.Kinds;
using Sightglass.Book.Model;
using Sightglass.Network.Springs;
using Sightglass.Plant.Gear;
using Sightglass.Plant.Plans;
using Sightglass.Plant.Signals;

namespace Sightglass.Plant.Kinds.RunningGear;

/// <summary>Something rigid that has weight and rests on springs.</summary>
public abstract class CarriedKind : KindBuilder
{
    private const string Load = "extra load";

    private static readonly ImmutableArray<KindQuantity> s_quantities =
    [
        new("drop", Dimension.Metre, "By how much its middle stands lower than with nothing on any spring."),
        new("lean", Dimension.One, "Down on the right by this much for each metre across; less than nothing: on the left."),
        new("pitch", Dimension.One, "Down at the rear by this much for each metre along; less than nothing: at the front."),
    ];

    private static readonly KindFault s_load = new(Load, "Snow, ice, ballast or something else that does not belong there lies on it.",
    [
        Parameter.Needed("mass", Dimension.Kilogram, "Of what lies on it.", "1 kg", "200 t"),
        Parameter.Of("along", Dimension.Metre, "Where, behind its middle; less than nothing: ahead of it.", "0 m", "-30 m", "30 m"),
        Parameter.Of("across", Dimension.Metre, "Where, to the right of its middle; less than nothing: to the left.", "0 m", "-3 m", "3 m"),
    ]);

    /// <summary>The sheet of a kind that is carried.</summary>
    private protected static KindSheet Carried(string name, string purpose, string details, params ReadOnlySpan<KindParameter> more) => new()
    {
        Name = name,
        Purpose = purpose,
        Details = details,
        Role = KindRole.Signal,
        Symbol = "box",
        Parameters = [Parameter.Needed("mass", Dimension.Kilogram, "Of it alone, without what is carried by it or lies on it.", "1 kg", "500 t"), .. more],
        Quantities = s_quantities,
        Faults = [s_load],
    };

    /// <summary>How it may move; what it may not do is held by something that carries no weight.</summary>
    private protected virtual Freedoms Moves(Item item) => Freedoms.All;

    public sealed override void Declare(PlanBuilder plan, Item item)
    {
        ArgumentNullException.ThrowIfNull(plan);
        plan.Gear.Add(item, Moves(item));
        foreach (KindQuantity quantity in s_quantities)
        {
            plan.Name($"{quantity.Name} of {item.Name}", quantity.Dimension, new SlotSignal(plan.SlotNamed($"{quantity.Name} of {item.Name}")));
        }
    }

    public sealed override void Connect(PlanBuilder plan, Item item)
    {
        ArgumentNullException.ThrowIfNull(plan);
        GearPart part = plan.Gear.PartOf(item.Name);
        GearMass mass = part.Find(item.Name)!;
        plan.Gear.LoadUp(mass, item.Get("mass"));
        ImmutableArray<Slot> load = plan.Fault(item, Load, ("mass", 1000), ("along", 0), ("across", 0));
        part.Weigh(mass, s => s[load[0].Index], s => s[load[1].Index], s => s[load[2].Index]);
        part.Tell(plan.SlotNamed($"drop of {item.Name}"), s => Sag(s, 0, 0));
        part.Tell(plan.SlotNamed($"lean of {item.Name}"), s => Sag(s, 0, mass.Way) - Sag(s, 0, 0));
        part.Tell(plan.SlotNamed($"pitch of {item.Name}"), s => Sag(s, mass.Way, 0) - Sag(s, 0, 0));

        double Sag(SuspensionState state, double along, double across) => state.Sag(mass.Body, mass.X + along, mass.Y + across);
    }
}
