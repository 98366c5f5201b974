using Sightglass.Basics.Quantities;
using Sightglass.Book.Kinds;
using Sightglass.Book.Model;
using Sightglass.Plant.Plans;
using Sightglass.Plant.Signals;

namespace Sightglass.Plant.Kinds.RunningGear;

/// <summary>What pulls and pushes at the end of a vehicle, with its lock and its tell-tale.</summary>
public sealed class CouplerKind : KindBuilder
{
    /// <summary>As written in a book.</summary>
    public const string Name = "coupler";

    private const string LiftedBy = "lifted by";
    private const string LockUp = "lock up";
    private const string Jams = "jams";
    private const string Broken = "broken";
    private const string Torn = "torn out";

    public override KindSheet Sheet { get; } = new()
    {
        Name = Name,
        Purpose = "A coupler at the end of a vehicle: what pulls, what pushes, and the lock that holds it.",
        Details = """
            A train locks the couplers of facing ends into each other. Its lever, lifted, lifts its lock, and the vehicles come apart: the lever stands beside the rails, so that nobody reaches between. A lock that has not dropped looks coupled, holds while the train stands, and comes apart as soon as it moves; the
            tell-tale (`down`) shows it before. Forces, slack and wear are not worked out: a book that asks for slack says so in its text. Source: common practice, no source.
            """,
        Role = KindRole.Signal,
        Symbol = "coupler",
        CoupledBy = CouplerLockKind.Name,
        Parameters = [Parameter.Item(LiftedBy, "Its lever, a handle or switch: in any position but its first the lock is lifted. Where none is named only a fault parts it.")],
        Quantities = [new("down", Dimension.One, "Its lock is down, as its tell-tale shows.", IsCondition: true), new("joined", Dimension.One, "It is locked into that of another vehicle.", IsCondition: true), new(Torn, Dimension.One, "It came apart with a hose or a jumper still in, which was torn out.", IsCondition: true)],
        Faults =
        [
            new(LockUp, "Its lock has not dropped: it looks coupled, and comes apart as soon as the vehicles move.", []),
            new(Jams, "Its lever does not lift its lock.", []),
            new(Broken, "It has broken and holds nothing.", []),
        ],
    };

    public override void Declare(PlanBuilder plan, Item item)
    {
        (Slot up, Slot broken) = (plan.Fault(item, LockUp, ("", 1))[0], plan.Fault(item, Broken, ("", 1))[0]);
        plan.Fault(item, Jams, ("", 1));
        Signal[] down = [new SlotSignal(up, -1, 0.5), new SlotSignal(broken, -1, 0.5), .. LeverOf(plan, item) is { } lever ? [new SlotSignal(lever, -1, 0.5)] : Array.Empty<Signal>()];
        plan.Name($"{Torn} of {item.Name}", Dimension.One, new SlotSignal(TornOut(plan, item), 1, -0.5), isCondition: true);
        plan.Name($"down of {item.Name}", Dimension.One, new AllSignal([.. down]), isCondition: true);
    }

    public override void Connect(PlanBuilder plan, Item item)
    {
        if (item.Parameters.TryGetValue(LiftedBy, out ParameterValue? named) && LeverOf(plan, item) is null)
        {
            plan.Found.Error("P016", named.Span, $"`{named.Text}` cannot move `{item.Name}`", "name a handle or a switch");
        }

        Signal[] locks = [.. plan.Items.Where(i => i.Kind.Name == CouplerLockKind.Name && (i.From?.Item == item.Name || i.To?.Item == item.Name)).Select(i => new SlotSignal(plan.PositionSlot(i), 1, -0.5))];
        plan.Name($"joined of {item.Name}", Dimension.One, locks.Length == 0 ? new ConstantSignal(-1) : new AnySignal([.. locks]), isCondition: true);
    }

    /// <summary>Lets the lock between it and another one open by its lever and by what fails of it.</summary>
    /// <returns>Whether it lets itself be locked, as a margin.</returns>
    internal static Signal Open(PlanBuilder plan, Item item, Item held)
    {
        Slot position = plan.PositionSlot(held), stuck = plan.PlanOf(held).Jammed!.Value, speed = plan.SlotNamed("speed");
        Slot up = plan.Fault(item, LockUp, ("", 1))[0], jams = plan.Fault(item, Jams, ("", 1))[0], broken = plan.Fault(item, Broken, ("", 1))[0];
        foreach (Slot trigger in new[] { up, speed, position })
        {
            Part(trigger, s => s[up.Index] > 0.5 && s[speed.Index] != 0);
        }

        Part(broken, s => s[broken.Index] > 0.5);
        if (LeverOf(plan, item) is not { } lever)
        {
            return new SlotSignal(broken, -1, 0.5);
        }

        Part(lever, s => s[lever.Index] > 0.5 && s[jams.Index] < 0.5 && s[stuck.Index] < 0.5);
        return new AllSignal([new SlotSignal(broken, -1, 0.5), new SlotSignal(lever, -1, 0.5)]);

        void Part(Slot trigger, SlotCondition when) => plan.AddPulse(new($"{held.Name} comes apart.", trigger, s => s[position.Index] > 0.5 && when(s), position, _ => 0));
    }

    /// <summary>Whether something was torn out when it came apart.</summary>
    internal static Slot TornOut(PlanBuilder plan, Item item) => plan.SlotNamed($"{Torn} of {item.Name}");

    /// <summary>In what condition it lets itself be locked, in the words of a book.</summary>
    internal static string Locks(Item item) => $"down of {item.Name}";

    private static Slot? LeverOf(PlanBuilder plan, Item item) =>
        item.Parameters.TryGetValue(LiftedBy, out ParameterValue? named) && plan.Book.Items.GetValueOrDefault(named.Names[0]) is { Positions.Length: > 1 } lever ? plan.PositionSlot(lever) : null;
}
