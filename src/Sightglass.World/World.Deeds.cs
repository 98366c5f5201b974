using Sightglass.Basics.Time;
using Sightglass.Book.Model;
using Sightglass.Plant.Plans;
using Sightglass.Plant.Signals;
using Sightglass.World.Agenda;
using Sightglass.World.Journal;
using Sightglass.World.People;
using Sightglass.World.Situations;
using Sightglass.World.Watches;

namespace Sightglass.World;

public sealed partial class World
{
    /// <summary>What an indication shows now, as a person reads it, SI; null where there is nothing to read. Only with a state in view.</summary>
    public double? Read(Item item)
    {
        ArgumentNullException.ThrowIfNull(item);
        return ConditionCompiler.ReadingOf(Plan, item) is { } signal
            ? ConditionCompiler.Rounded(item.Reading!, Value(signal))
            : null;
    }

    /// <summary>Schedules a fault of the situation.</summary>
    public void AddFault(DrawnFault fault, SimTime at)
    {
        _faults.Add(fault);
        Agenda.Add(new(at, AgendaKind.Fault, _faults.Count - 1));
    }

    internal void StartWalk(Person person, int place)
    {
        double seconds = person.Place == place ? 0 : Plan.Ways.Seconds(person.Place, place) * WayTable.OrdinaryPace / person.Role.WalkingSpeed;
        person.Walked += person.Place == place ? 0 : Plan.Ways.Seconds(person.Place, place) * WayTable.OrdinaryPace;
        person.WalkingTo = place;
        person.Place = seconds > 0 ? -1 : place;
        Agenda.Add(new(Now + SimTime.FromSeconds(seconds), AgendaKind.Person, person.Id));
    }

    /// <summary>Moves a control; a jammed one stays where it is.</summary>
    internal bool Turn(Item item, string position)
    {
        ItemPlan plan = Plan.Items[item.Name];
        if (plan.Position is not { } slot || (plan.Jammed is { } jammed && GetSlot(jammed) > 0.5))
        {
            return false;
        }

        SetSlot(slot, item.Positions.IndexOf(position));
        return true;
    }

    internal static string Capital(string text) => text.Length == 0 ? text : char.ToUpperInvariant(text[0]) + text[1..];

    private void PutIn(DrawnFault fault)
    {
        Note(JournalKind.Truth, $"Truth: {fault.Fault} of {fault.Item}.");
        ItemPlan plan = Plan.Items[fault.Item];
        if (fault.Fault == "stuck" && plan.Held is { } held && Plan.Items[fault.Item].Shown is { } shown)
        {
            SetSlot(held, Value(shown) + (plan.Bias is { } bias ? GetSlot(bias) : 0));
        }

        foreach (FaultValue value in plan.Faults[fault.Fault])
        {
            SetSlot(value.Slot, fault.Values.TryGetValue(value.Name, out double given) ? given : value.Usual);
        }
    }

    private void TakeOut(string item, string fault)
    {
        Note(JournalKind.Truth, $"Truth: {fault} of {item} is gone.");
        foreach (FaultValue value in Plan.Items[item].Faults[fault])
        {
            SetSlot(value.Slot, 0);
        }
    }

    private void Act(WorldAction action)
    {
        switch (action)
        {
            case WorldAction.Operate o:
                Item item = Plan.Book.Items[o.Item];
                bool moved = Turn(item, o.Position);
                Note(JournalKind.Deed, $"{(o.Person < 0 ? "Instructor" : Capital(_people[o.Person].Role.Name))} puts {o.Item} to {o.Position}{(moved ? "" : ", but it does not move")}.");
                break;
            case WorldAction.Walk w:
                Note(JournalKind.Deed, $"{Capital(_people[w.Person].Role.Name)} goes to {w.Place}.");
                StartWalk(_people[w.Person], Plan.Ways.IndexOf(w.Place));
                break;
            case WorldAction.PutIn p:
                PutIn(new(p.Item, p.Fault, p.Values));
                break;
            case WorldAction.TakeOut t:
                TakeOut(t.Item, t.Fault);
                break;
            case WorldAction.SetInput s:
                SetSlot(Plan.Starts[s.Name].Slot, s.Value);
                break;
        }
    }

    private void Finish(int id)
    {
        Person person = _people[id];
        if (person.WalkingTo >= 0)
        {
            (person.Place, person.WalkingTo) = (person.WalkingTo, -1);
        }

        Run?.Resume(person);
    }
}
