using System.Collections.Immutable;
using Sightglass.Book.Model;

namespace Sightglass.Training.Routes;

/// <summary>A place at which the group stops.</summary>
/// <param name="Place">Where.</param>
/// <param name="Seconds">Of walking since the stop before, at the group's pace.</param>
/// <param name="Metres">Since the stop before.</param>
/// <param name="Passed">Places that are passed on the way to it.</param>
/// <param name="Items">What is shown there, from the nearest onward as the book lists it.</param>
/// <param name="Hazards">Dangers of being there.</param>
/// <param name="OnTouch">Dangers of touching something that is shown there.</param>
public sealed record RouteStop(
    Place Place, double Seconds, double Metres, ImmutableArray<string> Passed, ImmutableArray<Item> Items, ImmutableArray<Hazard> Hazards, ImmutableArray<Hazard> OnTouch)
{
    /// <summary>In how many turns a group comes by; 1 where the book says of no room.</summary>
    /// <param name="people">Who come by; null where it does not matter.</param>
    /// <param name="staying">Who stand there in every turn beside them, as whoever speaks; where there is room for one alone they speak from outside.</param>
    public int TurnsOf(int? people, int staying = 0)
    {
        if (people is not { } n || Place.Room is not { } room)
        {
            return 1;
        }

        int atOnce = Math.Max(1, room - staying);
        return Math.Max(1, (n + atOnce - 1) / atOnce);
    }
}
