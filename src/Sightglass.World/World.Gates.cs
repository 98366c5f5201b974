using Sightglass.Basics.Time;
using Sightglass.Plant.Plans;
using Sightglass.World.Agenda;
using Sightglass.World.Journal;
using Sightglass.World.People;
using Sightglass.World.Situations;

namespace Sightglass.World;

/// <content>
/// Doors, steps and ladders that nobody gets by. Nobody knows of them from afar: who comes to one tries it, and then takes the shortest way that they still know. What is mended is told to everybody.
/// </content>
public sealed partial class World
{
    /// <summary>s by which two moments on a way are the same.</summary>
    private const double SameMoment = 1e-6;

    /// <summary>Whether something that a way goes by may be shut: where nothing is, no way is looked through.</summary>
    private bool _shuts;

    /// <summary>Whether nobody gets by an item as things stand; an item by which no way goes is not shut.</summary>
    public bool IsShut(string item) => Plan.Access.GateAt(item) is { } gate && gate.IsShut(_slots);

    private bool AnyShut()
    {
        foreach (string item in Plan.Access.Gates)
        {
            if (IsShut(item))
            {
                return true;
            }
        }

        return false;
    }

    /// <summary>The place before the first thing on the way that somebody does not get by; −1 where nothing is shut.</summary>
    private int ShutOnTheWay(Person person, int from, int to)
    {
        for (int here = from, there; here != to; here = there)
        {
            there = person.Ways.Next(here, to);
            if (there < 0)
            {
                return -1;
            }

            if (ShutBetween(person, here, there) is not null)
            {
                return here;
            }
        }

        return -1;
    }

    /// <summary>What is shut between two places that are joined; null where one gets through.</summary>
    private string? ShutBetween(Person person, int here, int there)
    {
        foreach (string item in person.Ways.Through(here, there))
        {
            if (IsShut(item))
            {
                return item;
            }
        }

        return null;
    }

    /// <summary>Somebody has arrived before what was shut as they came: they try it, and go on by another way where it still is.</summary>
    /// <returns>False where they had arrived for good, or know of no other way.</returns>
    private bool GoesOn(Person person)
    {
        if (person.Onward is var to && to < 0)
        {
            return false;
        }

        double tried = 0;
        person.Onward = -1;
        if (person.Ways.Next(person.Place, to) is >= 0 and var next && ShutBetween(person, person.Place, next) is { } item)
        {
            person.Ways = person.Ways.Without(item);
            tried = HumanTimes.TriesDoor;
            if (Journal is not null)
            {
                Note(JournalKind.Finding, $"{person.Role.Name} comes to {item} and does not get by it.");
            }
        }

        if (double.IsInfinity(person.Ways.Seconds(person.Place, to)))
        {
            person.Missed = to;
            if (Journal is not null)
            {
                Note(JournalKind.Finding, $"{person.Role.Name} finds no other way to {Plan.Ways.Places[to].Name}.");
            }

            return false;
        }

        StartWalk(person, to, tried);
        return true;
    }

    /// <summary>Something has been shut: who is on the way and has not come so far yet will stand before it.</summary>
    private void Shut(FaultSlots fault)
    {
        if (Plan.Access.GateAt(fault.Item) is not { } gate || !gate.IsShut(_slots))
        {
            return;
        }

        _shuts = true;
        foreach (Person person in _people)
        {
            if (person.WalkingTo >= 0)
            {
                HoldUp(person);
            }
        }
    }

    private void HoldUp(Person person)
    {
        if (person.Left < 0 || Agenda.TimeOf(AgendaKind.Person, person.Id) is not { } arrives)
        {
            return;
        }

        int to = person.WalkingTo;
        double left = (arrives - Now).Seconds * person.Role.WalkingSpeed / WayTable.OrdinaryPace;
        for (int here = person.Left, there; here != to; here = there)
        {
            there = person.Ways.Next(here, to);
            if (there < 0)
            {
                return;
            }

            double beyond = person.Ways.Seconds(here, to);
            if (left < beyond - SameMoment || ShutBetween(person, here, there) is null)
            {
                continue; // past it, on it, or nothing there
            }

            (person.Onward, person.WalkingTo) = (person.Towards, here);
            person.Walked -= beyond * WayTable.OrdinaryPace;
            SimTime then = arrives - SimTime.FromSeconds(beyond * WayTable.OrdinaryPace / person.Role.WalkingSpeed);
            Agenda.Remove(AgendaKind.Person, person.Id);
            Agenda.Add(new(then < Now ? Now : then, AgendaKind.Person, person.Id));
            if (person.Within < 0 && person.Ahead >= 0 && person.Ways.Seconds(person.Ahead, to) <= beyond)
            {
                Agenda.Remove(AgendaKind.Pass, person.Id); // what injures there is not passed any more
                person.Ahead = -1;
            }

            return;
        }
    }

    /// <summary>The ways that somebody knows when they set out: what has been mended was told to everybody.</summary>
    internal WayTable KnownWays(Person person)
    {
        WayTable ways = person.Ways;
        if (!ways.Shut.IsEmpty)
        {
            foreach (string item in person.Ways.Shut)
            {
                ways = IsShut(item) ? ways : ways.With(item);
            }
        }

        return ways;
    }
}
