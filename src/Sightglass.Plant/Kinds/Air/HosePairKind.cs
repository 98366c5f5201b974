using Sightglass.Basics.Quantities;
using Sightglass.Book.Kinds;
using Sightglass.Book.Model;
using Sightglass.Network.Laws.Gas;
using Sightglass.Plant.Plans;
using Sightglass.Plant.Signals;

namespace Sightglass.Plant.Kinds.Air;

/// <summary>Two couplings between the same ends whose hoses can be taken for each other.</summary>
public sealed class HosePairKind : KindBuilder
{
    /// <summary>The kind of item that is a coupling of hoses.</summary>
    public const string Coupling = "hose coupling";

    private const string Couplings = "couplings";
    private const string Crossed = "crossed";

    public override KindSheet Sheet { get; } = new()
    {
        Name = "hose pair",
        Purpose = "Two couplings between the same ends whose hoses can be taken for each other.",
        Details = """
            Crossed, the hose at the first end of each coupling is joined to the other coupling's hose at the second end, as far as the coupling of the first stands coupled. Parting both sets it
            right: who joins them again looks. A train has one for every two lines that an end calls `mistaken` for each other. Source: as for the orifice.
            """,
        Medium = "brake",
        Role = KindRole.Mistake,
        Parameters = [new(Couplings, ParameterType.Items, Dimension.One, "The two couplings.", Required: true)],
        Quantities = [new(Crossed, Dimension.One, "Each hose is joined to the other's.", IsCondition: true)],
        Faults = [new(Crossed, "Each hose was joined to the other's.", [])],
    };

    public override IEnumerable<string> AlsoJoins(ClassBook book, Item item) => CouplingsOf(book, item).SelectMany(c => HoseCouplingKind.Hoses(book, c)).Select(h => h.Name);

    public override void Declare(PlanBuilder plan, Item item)
    {
        Slot crossed = SlotOf(plan, item);
        plan.Name($"{Crossed} of {item.Name}", Dimension.One, new MarginSignal(new SlotSignal(crossed), 0.5, 1), isCondition: true);
        if (Ends(plan, item) is not { } ends)
        {
            return;
        }

        plan.SwapBy(ends.One.Coupling, crossed);
        plan.SwapBy(ends.Other.Coupling, crossed);
        foreach ((Item coupling, Item first, _) in new[] { ends.One, ends.Other })
        {
            Slot position = plan.PositionSlot(coupling);
            Item second = coupling == ends.One.Coupling ? ends.Other.Second : ends.One.Second;
            plan.JoinHead(first, s => Joined(s, position, crossed));
            plan.JoinHead(second, s => Joined(s, position, crossed));
        }

        (Slot one, Slot other) = (plan.PositionSlot(ends.One.Coupling), plan.PositionSlot(ends.Other.Coupling));
        foreach (Slot moved in new[] { one, other })
        {
            plan.AddPulse(new($"{item.Name} are apart.", moved, s => s[one.Index] < 0.5 && s[other.Index] < 0.5 && s[crossed.Index] > 0.5, crossed, _ => 0));
        }
    }

    public override void Connect(PlanBuilder plan, Item item)
    {
        if (Ends(plan, item) is not { } ends)
        {
            ParameterValue? named = item.Parameters.GetValueOrDefault(Couplings);
            plan.Found.Error("P028", named?.Span ?? item.Span, $"`{item.Name}` names no two couplings of hoses", $"let `{Couplings}` name two items of the kind `{Coupling}`, each between two hoses");
            return;
        }

        Cross(plan, item, ends.One.Coupling, ends.One.First, ends.Other.Second);
        Cross(plan, item, ends.Other.Coupling, ends.Other.First, ends.One.Second);
    }

    /// <summary>The way from one line into the other, open while they are crossed.</summary>
    private static void Cross(PlanBuilder plan, Item item, Item coupling, Item from, Item to)
    {
        if (plan.FindStore(from.Name) is not { } one || plan.FindStore(to.Name) is not { } other)
        {
            return;
        }

        (Slot crossed, Slot position) = (SlotOf(plan, item), plan.PositionSlot(coupling));
        double[] law = GasPaths.OfDiameter(Math.Min(HoseCouplingKind.Head(from), HoseCouplingKind.Head(to)));
        GasPaths.Between<GasIso6358>(plan, $"{from.Name} to {to.Name}", one, other, law, n => [plan.Bind(n, s => Joined(s, position, crossed))]);
    }

    private static Slot SlotOf(PlanBuilder plan, Item item) => plan.Fault(item, Crossed, ("", 1))[0];

    private static double Joined(ReadOnlySpan<double> slots, Slot position, Slot crossed) => slots[crossed.Index] > 0.5 && slots[position.Index] > 0.5 ? 1 : 0;

    private static (End One, End Other)? Ends(PlanBuilder plan, Item item) =>
        CouplingsOf(plan.Book, item) is [var one, var other] && one != other
            && HoseCouplingKind.Hoses(plan.Book, one) is [var a, var b] && HoseCouplingKind.Hoses(plan.Book, other) is [var c, var d]
            ? (new(one, a, b), new(other, c, d))
            : null;

    private static Item[] CouplingsOf(ClassBook book, Item item) =>
        [.. (item.Parameters.GetValueOrDefault(Couplings)?.Names ?? []).Select(n => book.Items.GetValueOrDefault(n)).OfType<Item>().Where(i => i.Kind.Name == Coupling)];

    private sealed record End(Item Coupling, Item First, Item Second);
}
