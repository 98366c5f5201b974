using Sightglass.Basics.Quantities;
using Sightglass.Book.Kinds;
using Sightglass.Book.Model;
using Sightglass.Plant.Kinds.Paths;
using Sightglass.Plant.Plans;

namespace Sightglass.Plant.Kinds.Air;

/// <summary>The valve of a vehicle that applies its brakes when the brake pipe's pressure falls.</summary>
public sealed partial class ControlValveKind : KindBuilder
{
    private const string Graduated = "graduated";
    private const string DirectBy = "direct release by";
    private const string LimitedBy = "limited by";

    public override KindSheet Sheet { get; } = new()
    {
        Name = "control valve",
        Purpose = "Puts air of an auxiliary reservoir into the brake cylinder as the brake pipe's pressure falls, and lets it out as it rises.",
        Details = """
            Graduated release: the cylinder gets ratio·(reference volume − brake pipe − insensitivity), at most its greatest pressure; the reference volume follows the brake pipe
            through a small hole while the two are within the insensitivity, and is cut off beyond; the auxiliary reservoir is charged through a check valve. The book may let an item
            choose that it releases directly: its exhaust then stays shut until the brake pipe has risen by the release difference above the balance, whereupon the reference volume empties
            into the brake pipe through its hole and the cylinder follows it to the end, until the brake pipe falls so far that it applies again. Direct release by design: air
            passes while the auxiliary reservoir stands above the brake pipe, so that both fall together (Boyle's law, A2-08); once the brake pipe has risen above it by the
            release difference the cylinder empties to the end and the charging hole stands open both ways, until the brake pipe falls below by the insensitivity. Source: ideal gas
            law, ISO 6358; the balances are common practice, no source.
            """,
        Medium = "brake",
        Role = KindRole.Path,
        Symbol = "control",
        Parameters =
        [
            .. PathSheet.Opening,
            Parameter.Item("senses", "The brake pipe.", required: true),
            Parameter.Choice("release", "How it releases by design.", Graduated, Graduated, "direct"),
            Parameter.Item(DirectBy, "Graduated release: a handle with positions; graduated while it stands in its first one, direct in the others. Or a relay: direct while it is picked up."),
            Parameter.Needed("exhaust diameter", Dimension.Metre, "Of its exhaust to the outside.", "0.1 mm", "100 mm"),
            Parameter.Of("charging diameter", Dimension.Metre, "Of the hole through which the auxiliary reservoir is charged from the brake pipe.", "2 mm", "0.1 mm", "50 mm"),
            Steer.Width,
            Parameter.Of("insensitivity", Dimension.Pressure, "Fall of the brake pipe that applies nothing.", "3 psi", "0.1 psi", "20 psi"),
            Parameter.Of("release difference", Dimension.Pressure, "Direct release: rise of the brake pipe above what the brake is held by, its auxiliary reservoir or its balance, that lets the brake off.", "1.5 psi", "0.1 psi", "20 psi"),
            Parameter.Of("ratio", Dimension.One, "Graduated release: cylinder pressure over reduction.", "2.5", "0.2", "10"),
            Parameter.Of("greatest", Dimension.Pressure, "Graduated release: greatest cylinder pressure; or say what sets it.", "60 psi", "1 psi", "200 psi"),
            Parameter.Item(LimitedBy, "Graduated release: a handle that sets the greatest cylinder pressure."),
            new("limits", ParameterType.ByPosition, Dimension.Pressure, "Greatest cylinder pressure in each of that handle's positions."),
            Parameter.Of("reference volume", Dimension.Volume, "Graduated release: of its reference volume.", "4 L", "0.05 L", "100 L"),
            Steer.CutOutBy,
            Parameter.Of("reference diameter", Dimension.Metre, "Graduated release: of the hole between brake pipe and reference volume.", "1 mm", "0.1 mm", "20 mm"),
        ],
        Quantities =
        [
            PathSheet.Flow,
            new("exhaust", Dimension.VolumeFlow, "Free air that leaves the cylinder through it."),
            new("reference pressure", Dimension.Pressure, "What it compares the brake pipe with: its reference volume, with direct release the auxiliary reservoir."),
        ],
        Faults = [new("stuck", "It neither applies nor releases.", []), new("slow to release", "Its exhaust is choked.", [Parameter.Of("share", Dimension.One, "Of the exhaust that is left.", "5 %", "0.1 %", "100 %")])],
    };

    public override void Declare(PlanBuilder plan, Item item)
    {
        if (item.Text("release") == Graduated)
        {
            if (item.Parameters.ContainsKey(DirectBy))
            {
                plan.SlotNamed(ReleasingOf(item));
            }

            GasStore.DeclareChamber(plan, item, ReferenceOf(item), item.Get("reference volume"), GasStore.ItemNamed(plan, item, "senses"));
        }
        else
        {
            plan.SlotNamed(ReleasingOf(item));
            if (item.Parameters.TryGetValue(DirectBy, out ParameterValue? by))
            {
                plan.Found.Error("P033", by.Span, $"`{item.Name}` releases directly by design, so `{by.Text}` has nothing to choose", "leave `release` out, or leave this out");
            }
        }
    }

    public override void Connect(PlanBuilder plan, Item item)
    {
        Slot stuck = plan.Fault(item, "stuck", ("", 1))[0];
        Slot slow = plan.Fault(item, "slow to release", ("share", 0.05))[0];
        if (GasStore.Named(plan, item, "senses") is not { } pipe || GasPaths.Component(plan, item) is not { } supply || Join.Ends(plan, item) is not var (auxiliary, cylinder))
        {
            return;
        }

        SlotFunction cutIn = Steer.CutIn(plan, item);
        Parts parts = new(plan, item, pipe, auxiliary, cylinder, supply, s => cutIn(s) * (1 - s[stuck.Index]), s => s[slow.Index] > 0 ? s[slow.Index] : 1);
        if (item.Text("release") == Graduated)
        {
            ConnectGraduated(parts);
        }
        else
        {
            ConnectDirect(parts);
        }
    }

    /// <summary>What both sorts of release are built from.</summary>
    private sealed record Parts(
        PlanBuilder Plan, Item Item, StoreEnd Pipe, StoreEnd Auxiliary, StoreEnd Cylinder, double[] Supply, SlotFunction Works, SlotFunction ExhaustShare)
    {
        public int Network => Pipe.Network;

        public double[] OpeningOf(string diameter) => GasPaths.OfDiameter(Item.Get(diameter), Item.Get("discharge coefficient"));
    }
}
