using System.Collections.Immutable;
using Sightglass.Book.Model;

namespace Sightglass.Training.Routes;

/// <summary>A walk for a purpose, found.</summary>
/// <param name="Book">Whose machine it is.</param>
/// <param name="Request">What was wanted.</param>
/// <param name="Stops">In order; the first is where the walk begins, and the last where it ends, also where nothing is shown there.</param>
/// <param name="LeastSeconds">No walk that passes as few dangerous places takes less, at the group's pace; 0 where nothing is known.</param>
/// <param name="LeftOut">Items that have no place, or none that the group may go to.</param>
public sealed record RoutePlan(ClassBook Book, RouteRequest Request, ImmutableArray<RouteStop> Stops, double LeastSeconds, ImmutableArray<Item> LeftOut)
{
    /// <summary>Walking alone.</summary>
    public double Seconds => Stops.Sum(s => s.Seconds);

    public double Metres => Stops.Sum(s => s.Metres);

    /// <summary>Every place, passed or stopped at, one after the other.</summary>
    public IEnumerable<string> Way => Stops.SelectMany(s => s.Passed.Append(s.Place.Name));

    public bool IsShortest => LeastSeconds >= Seconds - 1e-6;

    /// <summary>Protections that being at its stops needs, each with the places, in the order in which they are come to.</summary>
    public IEnumerable<(Protection Protection, IReadOnlyList<string> Places)> ToBeThere => Needed(s => s.Hazards);

    /// <summary>Protections that touching what is shown needs, each with the places.</summary>
    public IEnumerable<(Protection Protection, IReadOnlyList<string> Places)> ToTouch => Needed(s => s.OnTouch);

    /// <summary>What is shown whose touch needs a protection, in the order in which it is come to.</summary>
    public IEnumerable<string> TouchedUnder(Protection protection)
    {
        ArgumentNullException.ThrowIfNull(protection);
        return Stops.SelectMany(s => s.Items.Where(i => s.OnTouch.Any(h => h.Protection == protection.Name && h.Items.Contains(i.Name)))).Select(i => i.Name).Distinct(StringComparer.Ordinal);
    }

    private IEnumerable<(Protection, IReadOnlyList<string>)> Needed(Func<RouteStop, IEnumerable<Hazard>> of) =>
        Stops.SelectMany(s => of(s).Where(h => h.Protection is not null).Select(h => (h.Protection, s.Place.Name)))
            .GroupBy(p => p.Protection!, p => p.Name)
            .Select(g => (Book.Protections[g.Key], (IReadOnlyList<string>)[.. g.Distinct(StringComparer.Ordinal)]));
}
