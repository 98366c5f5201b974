using Sightglass.Basics.Time;
using Sightglass.Plant.Plans;
using Sightglass.World.Agenda;
using Sightglass.World.People;

namespace Sightglass.World;

/// <content>
/// People on the way. Who leaves a place is within it, and meets its dangers, until half-way to the next; who passes one, from half-way before it to half-way after. Places where
/// nothing injures cost no event.
/// </content>
public sealed partial class World
{
    /// <param name="person">Who stands somewhere.</param>
    /// <param name="place">Where they want to go; there is a way as far as they know.</param>
    /// <param name="after">s that they take before they set out.</param>
    internal void StartWalk(Person person, int place, double after = 0)
    {
        int from = person.Place;
        (person.Left, person.Missed, person.Onward, person.Ways) = (from, -1, -1, KnownWays(person));
        if (_shuts && ShutOnTheWay(person, from, place) is >= 0 and var before)
        {
            (person.Onward, place) = (place, before);
        }

        double seconds = from == place ? 0 : person.Ways.Seconds(from, place);
        person.Walked += seconds * WayTable.OrdinaryPace;
        person.WalkingTo = place;
        Agenda.Add(new(Now + SimTime.FromSeconds(after + (seconds * WayTable.OrdinaryPace / person.Role.WalkingSpeed)), AgendaKind.Person, person.Id));
        if (seconds <= 0)
        {
            return;
        }

        person.Place = -1;
        if (_hazards.Injures(from))
        {
            PassAt(person, HalfwayFrom(person, from, place));
        }
        else
        {
            person.Within = -1;
            LookAhead(person, from);
        }
    }

    private void Arrive(Person person)
    {
        (person.Place, person.Within, person.WalkingTo, person.Ahead) = (person.WalkingTo, person.WalkingTo, -1, -1);
        Agenda.Remove(AgendaKind.Pass, person.Id);
        MeetHazards(person);
        Overseer?.Arrived(person);
    }

    /// <summary>Somebody on the way leaves the place they were within, or comes within the next.</summary>
    private void Pass(Person person)
    {
        if (person.Within >= 0)
        {
            int left = person.Within;
            LeaveHazards(person);
            person.Within = -1;
            LookAhead(person, left);
            return;
        }

        (person.Within, person.Ahead) = (person.Ahead, -1);
        PassAt(person, HalfwayFrom(person, person.Within, person.WalkingTo));
        MeetHazards(person);
    }

    /// <summary>Looks along the way for the next place where something injures, or may. The end of the way is met on arrival.</summary>
    private void LookAhead(Person person, int from)
    {
        for (int here = from, there; (there = person.Ways.Next(here, person.WalkingTo)) != person.WalkingTo; here = there)
        {
            if (_hazards.Injures(there))
            {
                person.Ahead = there;
                PassAt(person, HalfwayFrom(person, here, person.WalkingTo));
                return;
            }
        }
    }

    /// <param name="person">On the way.</param>
    /// <param name="left">Seconds of way still to go at that moment, at the ordinary pace.</param>
    private void PassAt(Person person, double left)
    {
        if (Agenda.TimeOf(AgendaKind.Person, person.Id) is { } arrives)
        {
            SimTime then = arrives - SimTime.FromSeconds(left * WayTable.OrdinaryPace / person.Role.WalkingSpeed);
            Agenda.Add(new(then < Now ? Now : then, AgendaKind.Pass, person.Id));
        }
    }

    /// <summary>Seconds of way still to go half-way between a place and the next on the way.</summary>
    private static double HalfwayFrom(Person person, int place, int to) => (person.Ways.Seconds(place, to) + person.Ways.Seconds(person.Ways.Next(place, to), to)) / 2;
}
