using Sightglass.Book.Kinds;
using Sightglass.Book.Model;
using Sightglass.Plant.Kinds.Paths;
using Sightglass.Plant.Plans;

namespace Sightglass.Plant.Kinds.Common;

/// <summary>A side door that a wire of the train opens and shuts.</summary>
public sealed class DoorKind : KindBuilder
{
    private const string OpenedBy = "opened by";
    private const string ClosedBy = "closed by";
    private const string LockedBy = "locked by";

    public override KindSheet Sheet { get; } = new()
    {
        Name = "door",
        Purpose = "A side door: a coil of the train opens it, another shuts it, and a person can push it.",
        Details = """
            It moves at once when what it names picks up: `opened by` opens it, `closed by` shuts it, and where both are up it opens; without either it stays where it is. Where nothing shuts it by wire it shuts when what opens it drops. While the control that it is `locked by` stands in any position but its
            first, it obeys no wire; a hand is held by `moves only while`. Whether it is shut is told by a contact that says `closed while: closed of DOOR`. Source: common practice, no source.
            """,
        Role = KindRole.Control,
        Symbol = "door",
        Positions = ["closed", "open"],
        Parameters =
        [
            Parameter.Item(OpenedBy, "The contactor, relay or transmitter that opens it; where none is named only a hand does."),
            Parameter.Item(ClosedBy, "The contactor, relay or transmitter that shuts it."),
            Parameter.Item(LockedBy, "A control that takes it out of service in any position but its first."),
            Interlock.Parameter,
        ],
        Faults = [new("stuck", "It does not move from where it stands.", []) { Bars = true }],
    };

    public override void Declare(PlanBuilder plan, Item item)
    {
        plan.PositionSlot(item);
        plan.JamFault(item);
    }

    public override void Connect(PlanBuilder plan, Item item)
    {
        if (!item.Parameters.ContainsKey(OpenedBy) && !item.Parameters.ContainsKey(ClosedBy))
        {
            return;
        }

        SlotFunction? opens = item.Parameters.ContainsKey(OpenedBy) ? Told.Share(plan, item, OpenedBy) : _ => 0;
        bool falls = !item.Parameters.ContainsKey(ClosedBy);
        SlotFunction? shuts = falls ? _ => 1 : Told.Share(plan, item, ClosedBy);
        if (opens is null || shuts is null)
        {
            return;
        }

        Slot position = plan.PositionSlot(item);
        Slot jammed = plan.PlanOf(item).Jammed!.Value;
        Slot? locked = LockOf(plan, item);
        SlotCondition free = s => s[jammed.Index] < 0.5 && !(locked is { } by && s[by.Index] > 0.5);
        IEnumerable<Slot> tellers = new[] { OpenedBy, ClosedBy }.Where(item.Parameters.ContainsKey).Select(p => Told.By(plan, plan.Book.Items[item.Parameters[p].Names[0]]));
        foreach (Slot trigger in tellers.Concat(locked is { } unlocked ? [unlocked] : []))
        {
            plan.AddPulse(new($"", trigger, free, position, s => opens(s) > 0.5 ? 1 : shuts(s) > 0.5 ? 0 : s[position.Index]));
        }
    }

    private static Slot? LockOf(PlanBuilder plan, Item item)
    {
        if (!item.Parameters.TryGetValue(LockedBy, out ParameterValue? named))
        {
            return null;
        }

        if (plan.Book.Items.GetValueOrDefault(named.Names[0]) is { Positions.Length: > 1 } control)
        {
            return plan.PositionSlot(control);
        }

        plan.Found.Error("P016", named.Span, $"`{named.Text}` cannot move `{item.Name}`", "name a handle or a switch");
        return null;
    }
}
