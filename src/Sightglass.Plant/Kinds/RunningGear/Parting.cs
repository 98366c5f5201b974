using System.Globalization;
using Sightglass.Book.Model;
using Sightglass.Plant.Plans;
using Sightglass.Plant.Signals;

namespace Sightglass.Plant.Kinds.RunningGear;

/// <summary>Two vehicles that come apart, and what goes with them: every hose and every jumper between them.</summary>
internal static class Parting
{
    /// <summary>The fault of whatever joins two vehicles; put on one of it, all of it has come apart.</summary>
    public const string Fault = "train parted";

    /// <summary>What the fault is, for a sheet.</summary>
    public const string Says = "The two vehicles came apart: this and every other coupling between them has parted under pressure.";

    private const int Coupled = 1;

    /// <summary>Lets what joins the ends of two vehicles come apart with the fault.</summary>
    public static void ByFault(PlanBuilder plan, Item item, Item one, Item other)
    {
        Slot position = plan.PositionSlot(item);
        Slot parted = plan.SharedFault(item, Fault, $"{Fault} between vehicles {Between(one, other)}");
        plan.AddPulse(new($"{item.Name} comes apart.", parted, s => s[parted.Index] > 0.5, position, _ => 0));
    }

    /// <summary>Lets what joins the ends of two vehicles come apart when their couplers do, and be coupled by hand only while those hold; where the book knows no couplers nothing follows.</summary>
    public static void WithTheCouplers(PlanBuilder plan, Item item, Item one, Item other)
    {
        if (one.Vehicle == other.Vehicle || LockOf(plan.Book, one, other) is not { } held)
        {
            return;
        }

        (Slot position, Slot locked) = (plan.PositionSlot(item), plan.PositionSlot(held));
        foreach (Item coupler in CouplerLockKind.CouplersOf(plan.Book, held))
        {
            plan.AddPulse(new($"", locked, s => s[locked.Index] < 0.5 && s[position.Index] > 0.5, CouplerKind.TornOut(plan, coupler), _ => 1));
        }

        plan.AddPulse(new($"{item.Name} comes apart.", locked, s => s[locked.Index] < 0.5 && s[position.Index] > 0.5, position, _ => 0));
        plan.Update(plan.PlanOf(item) with { Free = new(new SlotSignal(locked, 1, -0.5), $"{held.Positions[Coupled]} of {held.Name}", Coupled) });
    }

    private static Item? LockOf(ClassBook book, Item one, Item other) =>
        book.Items.Values.FirstOrDefault(i => i.Kind.Name == CouplerLockKind.Name && CouplerLockKind.CouplersOf(book, i) is [var a, var b]
            && ((a.Vehicle == one.Vehicle && b.Vehicle == other.Vehicle) || (a.Vehicle == other.Vehicle && b.Vehicle == one.Vehicle)));

    /// <summary>The same for every coupling between two vehicles; between ends of one vehicle the coupling stands alone.</summary>
    private static string Between(Item one, Item other) =>
        one.Vehicle == other.Vehicle ? $"{one.Name} and {other.Name}"
        : string.Create(CultureInfo.InvariantCulture, $"{Math.Min(one.Vehicle.Index, other.Vehicle.Index)} and {Math.Max(one.Vehicle.Index, other.Vehicle.Index)}");
}
