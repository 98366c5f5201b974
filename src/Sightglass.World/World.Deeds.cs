using System.Runtime.InteropServices;
using Sightglass.Basics.Time;
using Sightglass.Book.Model;
using Sightglass.Cards.Story;
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
        return Plan.ReadingOf(item) is { } signal
            ? ConditionCompiler.Rounded(item.Reading!, Value(signal))
            : null;
    }

    /// <summary>Schedules a fault of the situation.</summary>
    /// <returns>Its values, as they are where nothing is said, to be set; only until the next fault is added.</returns>
    internal Span<double> AddFault(FaultSlots fault, SimTime at)
    {
        Agenda.Add(new(at, AgendaKind.Fault, _faults.Count));
        return KeepFault(fault);
    }

    private Span<double> KeepFault(FaultSlots fault)
    {
        int first = _faultValues.Count;
        _faults.Add((fault, first));
        foreach (FaultValue value in fault.Values)
        {
            _faultValues.Add(value.Usual);
        }

        return CollectionsMarshal.AsSpan(_faultValues)[first..];
    }

    /// <summary>Moves a control; one that is jammed or locked, or that another control holds, stays where it is.</summary>
    internal bool Turn(Item item, string position)
    {
        ItemPlan plan = Plan.Items[item.Name];
        if (plan.Position is not { } slot || IsLocked(item) || (plan.Jammed is { } jammed && GetSlot(jammed) > 0.5) || HeldBy(item, position) is not null)
        {
            return false;
        }

        SetSlot(slot, item.Positions.IndexOf(position));
        return true;
    }

    /// <summary>The condition for which one waits to be moved to a position, as the book says it; null where it is free.</summary>
    internal string? HeldBy(Item item, string position) =>
        Plan.Items[item.Name].Free is { } free && (free.Into is not { } into || into == item.Positions.IndexOf(position)) && free.Margin.Evaluate(_bank)[_lane] < 0 ? free.While : null;

    internal static string Capital(string text) => text.Length == 0 ? text : char.ToUpperInvariant(text[0]) + text[1..];

    private void PutIn(FaultSlots fault, ReadOnlySpan<double> values)
    {
        if (Journal is not null)
        {
            Note(JournalKind.Truth, $"Truth: {fault.Item}, {new PositionWord(fault.Item, fault.Fault)}.");
        }

        if (fault.Sticks && fault.Plan.Held is { } held && fault.Plan.Shown is { } shown)
        {
            SetSlot(held, Value(shown) + (fault.Plan.Bias is { } bias ? GetSlot(bias) : 0));
        }

        for (int i = 0; i < fault.Values.Length; i++)
        {
            SetSlot(fault.Values[i].Slot, values[i]);
        }

        Shut(fault);
    }

    private void TakeOut(string item, string fault)
    {
        if (Journal is not null)
        {
            Note(JournalKind.Truth, $"Truth: {item}, {new PositionWord(item, fault)}: gone.");
        }

        foreach (FaultValue value in Plan.Items[item].Faults[fault])
        {
            SetSlot(value.Slot, 0);
        }
    }

    private void Act(WorldAction action)
    {
        if (PersonOf(action) is { } id)
        {
            Begin(action, id);
            return;
        }

        Overseer?.Interfered(action);
        switch (action)
        {
            case WorldAction.Speak s:
                Note(JournalKind.Said, $"{s.Role}: {s.Text}");
                break;
            case WorldAction.Operate o:
                bool moved = Turn(Plan.Book.Items[o.Item], o.Position);
                if (Journal is not null)
                {
                    FormattableString who = $"instructor";
                    PositionWord to = new(o.Item, o.Position);
                    Note(JournalKind.Deed, moved ? (FormattableString)$"{who} puts {o.Item} to {to}." : $"{who} puts {o.Item} to {to}, but it does not move.");
                }

                break;
            case WorldAction.PutIn p:
                FaultSlots slots = FaultSlots.Of(Plan, p.Item, p.Fault);
                PutIn(slots, slots.Fill(new double[slots.Values.Length], p.Values));
                break;
            case WorldAction.TakeOut t:
                TakeOut(t.Item, t.Fault);
                break;
            case WorldAction.SetInput i:
                SetSlot(Plan.Starts[i.Name].Slot, i.Value);
                break;
        }
    }

    private void Finish(int id)
    {
        Person person = _people[id];
        if (person.WalkingTo >= 0)
        {
            Arrive(person);
            if (GoesOn(person))
            {
                return;
            }
        }

        Heed(person);
        if (person.Deed is { } deed)
        {
            person.Deed = null;
            Complete(person, deed);
        }

        Run?.Resume(person);
    }
}
