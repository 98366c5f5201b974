using Sightglass.Book.Kinds;
using Sightglass.Book.Model;
using Sightglass.Network.Laws.Gas;
using Sightglass.Plant.Kinds.Paths;
using Sightglass.Plant.Kinds.RunningGear;
using Sightglass.Plant.Plans;

namespace Sightglass.Plant.Kinds.Air;

/// <summary>The heads of two hoses, locked into each other or parted. A train makes one for every line that two of its vehicles have in common.</summary>
public sealed class HoseCouplingKind : KindBuilder
{
    public override KindSheet Sheet { get; } = new()
    {
        Name = HosePairKind.Coupling,
        Purpose = "Joins the hoses of two vehicles: coupled, air passes from one to the other; parted, both heads are open.",
        Details = """
            Coupled, an orifice between the hoses as wide as the narrower of their heads, and both heads shut to the outside. A train has one for every line that the facing
            ends of two vehicles join; between hoses of one vehicle it can be written as an item. Source: as for the orifice.
            """,
        Medium = "brake",
        Role = KindRole.Path,
        Symbol = "coupling",
        CrossedBy = "hose pair",
        SharesDangers = true,
        Positions = ["parted", "coupled"],
        UsualPosition = "coupled",
        Quantities = [PathSheet.Flow],
        Faults =
        [
            new("stuck", "The heads do not come apart.", []),
            new("pulled apart", "They have parted under pressure: a head slipped.", []),
            new(Parting.Fault, Parting.Says, []),
        ],
    };

    public override void Declare(PlanBuilder plan, Item item)
    {
        Slot position = plan.PositionSlot(item);
        plan.JamFault(item);
        Slot apart = plan.Fault(item, "pulled apart", ("", 1))[0];
        plan.AddPulse(new($"{item.Name} comes apart.", apart, s => s[apart.Index] > 0.5, position, _ => 0));
        Item[] hoses = Hoses(plan.Book, item);
        if (hoses is [var one, var other])
        {
            Parting.ByFault(plan, item, one, other);
            Parting.WithTheCouplers(plan, item, one, other);
        }

        IReadOnlyList<Slot> swapped = plan.SwapsOf(item);
        foreach (Item hose in hoses)
        {
            plan.JoinHead(hose, s => Joined(s, position, swapped));
        }
    }

    public override void Connect(PlanBuilder plan, Item item)
    {
        if (Hoses(plan.Book, item) is not [var one, var other])
        {
            plan.Found.Error("P026", item.Span, $"`{item.Name}` joins what is no hose", "let `from` and `to` name two items of the kind `hose`");
            return;
        }

        Slot position = plan.PositionSlot(item);
        IReadOnlyList<Slot> swapped = plan.SwapsOf(item);
        double[] law = GasPaths.OfDiameter(Math.Min(Head(one), Head(other)));
        GasPaths.Add<GasIso6358>(plan, item, law, n => [plan.Bind(n, s => Joined(s, position, swapped))]);
    }

    /// <summary>1 while the two hoses are joined to each other: coupled, and neither taken for another's.</summary>
    private static double Joined(ReadOnlySpan<double> slots, Slot position, IReadOnlyList<Slot> swapped)
    {
        for (int i = 0; i < swapped.Count; i++)
        {
            if (slots[swapped[i].Index] > 0.5)
            {
                return 0;
            }
        }

        return slots[position.Index] > 0.5 ? 1 : 0;
    }

    internal static double Head(Item hose) => hose.Find("head diameter") ?? hose.Get("diameter");

    /// <summary>The two hoses that it joins: that of its first end and that of its second; fewer where an end names none.</summary>
    internal static Item[] Hoses(ClassBook book, Item item) =>
        [.. new[] { item.From, item.To }.OfType<PortReference>().Select(e => book.Items.GetValueOrDefault(e.Item)).OfType<Item>().Where(i => i.Kind.CoupledBy == item.Kind.Name)];
}
