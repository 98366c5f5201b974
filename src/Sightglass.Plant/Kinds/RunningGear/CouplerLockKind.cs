using Sightglass.Book.Kinds;
using Sightglass.Book.Model;
using Sightglass.Plant.Plans;
using Sightglass.Plant.Signals;

namespace Sightglass.Plant.Kinds.RunningGear;

/// <summary>The couplers of two vehicles, locked into each other or apart. A train makes one for every two facing ends that join couplers.</summary>
public sealed class CouplerLockKind : KindBuilder
{
    /// <summary>As a sheet names it.</summary>
    public const string Name = "coupler lock";

    public override KindSheet Sheet { get; } = new()
    {
        Name = Name,
        Purpose = "Holds two vehicles together: locked as they come together, parted by the lever of either of them.",
        Details = """
            No hand parts it: a lever does, of either vehicle, from the side on which somebody stands. When it parts, every hose and every jumper between the two vehicles comes apart with it, under pressure and live as they are; and as long as it is apart nothing can be coupled there. Somebody makes it `coupled` who lets the
            vehicles come together, while both levers are down. Source: common practice, no source.
            """,
        Role = KindRole.Control,
        Symbol = "coupler",
        CoupledAs = "lock",
        Positions = ["parted", "coupled"],
        UsualPosition = "coupled",
        Faults = [new("stuck", "It does not part: the lock is jammed under load.", []), new(Parting.Fault, Parting.Says, [])],
    };

    public override void Declare(PlanBuilder plan, Item item)
    {
        Slot position = plan.PositionSlot(item);
        plan.JamFault(item);
        if (CouplersOf(plan.Book, item) is not [var one, var other])
        {
            return;
        }

        Parting.ByFault(plan, item, one, other);
        Signal free = new AllSignal([new SlotSignal(position, -1, 0.5), CouplerKind.Open(plan, one, item), CouplerKind.Open(plan, other, item)]);
        plan.Update(plan.PlanOf(item) with { Free = new(free, $"parted of {item.Name} and {CouplerKind.Locks(one)} and {CouplerKind.Locks(other)}") });
    }

    /// <summary>The two couplers that it holds together; fewer where an end names none.</summary>
    internal static Item[] CouplersOf(ClassBook book, Item item) =>
        [.. new[] { item.From, item.To }.OfType<PortReference>().Select(e => book.Items.GetValueOrDefault(e.Item)).OfType<Item>().Where(i => i.Kind.CoupledBy == Name)];
}
