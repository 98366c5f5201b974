using Sightglass.Basics.Quantities;
using Sightglass.Book.Kinds;
using Sightglass.Book.Model;
using Sightglass.Plant.Gear;
using Sightglass.Plant.Plans;
using Sightglass.Plant.Signals;
using Spring = Sightglass.Network.Springs.Spring;

namespace Sightglass.Plant.Kinds.RunningGear;

/// <summary>A spring that carries one mass on another, read with a rule.</summary>
public sealed class SpringKind : KindBuilder
{
    private const string Carries = "carries";
    private const string StandsOn = "stands on";
    private const string Free = "free height";
    private const string Least = "least height";
    private const string RenewedBy = "renewed by";

    /// <summary>Of coils on coils or a frame on its stop, N/m: steel on steel.</summary>
    private const double StopStiffness = 1e9;

    public override KindSheet Sheet { get; } = new()
    {
        Name = "spring",
        Purpose = "Carries a body or a truck frame on what is below it; its height is read with a rule.",
        Details = """
            It gives way by its load over its stiffness and only presses. At its least height coils lie on each other, or the frame lies on its stop, and it is as good as rigid; so it is without the spring. Cracked, it has lost a part of its stiffness; packed, something is wedged
            in it and it comes to its end before its time. Without the same on both sides a vehicle stands on two corners: what one wheel loses, the wheels beside and behind it gain, and the one across the truck loses as well. Source: linear springs; the stop 10⁹ N/m (steel on steel, no source).
            """,
        Role = KindRole.Indication,
        Symbol = "spring",
        Parameters =
        [
            Parameter.Item(Carries, "The body, truck frame or equaliser that rests on it.", required: true),
            Parameter.Item(StandsOn, "The truck frame, equaliser or axle on which it stands.", required: true),
            Parameter.Needed("stiffness", Dimension.Stiffness, "Of all its coils and leaves together.", "1 N/m", "1e10 N/m"),
            Parameter.Of(Free, Dimension.Metre, "Its height with nothing on it.", "400 mm", "1 mm", "3 m"),
            Parameter.Of(Least, Dimension.Metre, "At which coils lie on each other, or the frame on its stop.", "250 mm", "0 mm", "3 m"),
            Parameter.Item(RenewedBy, "A control: in any but its first position the spring is a new one, whatever was wrong with the old one."),
        ],
        Quantities =
        [
            new("height", Dimension.Metre, "As a rule beside it shows it."), new("spring load", Dimension.Kilogram, "What it and its stop carry."),
            new("solid", Dimension.One, "It has come to its end and does not spring.", IsCondition: true),
        ],
        Faults =
        [
            new("cracked", "A coil or a leaf is broken.", [Parameter.Of("lost", Dimension.One, "Share of its stiffness that is gone.", "50 %", "1 %", "99 %")]),
            new("missing", "It is not there, or broken to pieces.", []),
            new("packed", "Something is wedged in it.", [Parameter.Of("lost", Dimension.One, "Share of its way down that is gone.", "70 %", "1 %", "100 %")]),
        ],
    };

    /// <summary>The masses that it joins are worked out together.</summary>
    public override IEnumerable<IEnumerable<string>> JoinsWires(ClassBook book, Item item) =>
        item is null ? [] : [new[] { Carries, StandsOn }.SelectMany(p => item.Parameters.TryGetValue(p, out ParameterValue? value) ? value.Names : [])];

    public override void Declare(PlanBuilder plan, Item item)
    {
        SlotSignal height = new(plan.SlotNamed($"height of {item.Name}"));
        plan.Name($"height of {item.Name}", Dimension.Metre, height);
        plan.Name($"spring load of {item.Name}", Dimension.Kilogram, new SlotSignal(plan.SlotNamed($"spring load of {item.Name}")));
        plan.Name($"solid of {item.Name}", Dimension.One, new SlotSignal(plan.SlotNamed($"solid of {item.Name}"), 1, -0.5), isCondition: true);
        plan.Update(plan.PlanOf(item) with { Shown = height });
    }

    public override void Connect(PlanBuilder plan, Item item)
    {
        GearMass? upper = plan.Gear.Named(item, Carries, "rest on");
        GearMass? lower = plan.Gear.Named(item, StandsOn, "carry");
        if (item.Get(Free) <= item.Get(Least))
        {
            plan.Found.Error("P052", item.Parameters[Free].Span, $"`{item.Name}` has no way to spring", $"let `{Free}` be above `{Least}`");
        }

        Slot? renewed = null;
        if (item.Parameters.TryGetValue(RenewedBy, out ParameterValue? by))
        {
            if (by.Names is [var name, ..] && plan.Book.Items.TryGetValue(name, out Item? control) && control.Positions.Length > 1)
            {
                renewed = plan.PositionSlot(control);
            }
            else
            {
                plan.Found.Error("P053", by.Span, $"`{by.Text}` cannot tell whether `{item.Name}` is new", "name a control with positions: the old one in its first, a new one in the others");
            }
        }

        if (item.Position is not { } at)
        {
            plan.Found.Error("P050", item.Span, $"`{item.Name}` does not say where it is", "write `position: { x: …, y: …, z: … }`");
        }
        else if (upper is not null && lower is not null)
        {
            Build(plan, item, upper, lower, (at.X, at.Y), s => renewed is { } position && s[position.Index] > 0.5);
        }
    }

    private static void Build(PlanBuilder plan, Item item, GearMass upper, GearMass lower, (double X, double Y) at, SlotCondition isNew)
    {
        double free = item.Get(Free), way = free - item.Get(Least);
        GearPart part = plan.Gear.PartOf(upper.Item.Name);
        Slot cracked = plan.Fault(item, "cracked", ("lost", 0.5))[0], missing = plan.Fault(item, "missing", ("", 1))[0], packed = plan.Fault(item, "packed", ("lost", 0.7))[0];
        Spring spring = part.Join(item.Name, upper, lower, at.X, at.Y, item.Get("stiffness"), s => isNew(s) ? 1 : s[missing.Index] > 0.5 ? 0 : 1 - s[cracked.Index]);
        Spring stop = part.Join(item.Name, upper, lower, at.X, at.Y, StopStiffness, gap: s => isNew(s) ? way : way * (1 - s[packed.Index]));
        part.Tell(plan.SlotNamed($"height of {item.Name}"), s => free + s.Sag(lower.Body, at.X, at.Y) - s.Sag(upper.Body, at.X, at.Y));
        part.Tell(plan.SlotNamed($"spring load of {item.Name}"), s => (s.Force(spring) + s.Force(stop)) / GearPart.Gravity);
        part.Tell(plan.SlotNamed($"solid of {item.Name}"), s => s.Force(stop) > 0 ? 1 : 0);
    }
}
