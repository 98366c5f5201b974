using Sightglass.Basics.Diagnostics;
using Sightglass.Basics.Time;
using Sightglass.Book.Model;
using Sightglass.Plant.Plans;
using Sightglass.Plant.Signals;
using Sightglass.World.Situations;

namespace Sightglass.Trials.Causes;

/// <summary>A search of the book with its names settled.</summary>
/// <param name="Search">As written.</param>
/// <param name="Plan">Of the machine or the train of its situation.</param>
/// <param name="Situation">Where the fact comes to hold while nothing is wrong.</param>
/// <param name="Wanted">The margin of the fact.</param>
public sealed record BoundSearch(Search Search, Plan Plan, Situation Situation, Signal Wanted)
{
    public SimTime Within => SimTime.FromSeconds(Search.Within);

    /// <param name="fleet">The plans of the book, all without errors.</param>
    /// <param name="search">Of the book.</param>
    /// <param name="found">Takes W016 and what does not fit of the situation.</param>
    /// <param name="roadNumber">Of the machine; null for the class, or the first that the situation allows.</param>
    /// <returns>Null where something does not fit.</returns>
    public static BoundSearch? Bind(Fleet fleet, Search search, DiagnosticList found, string? roadNumber = null)
    {
        ArgumentNullException.ThrowIfNull(fleet);
        ArgumentNullException.ThrowIfNull(search);
        ArgumentNullException.ThrowIfNull(found);
        Situation situation = fleet.Class!.Book.Situations[search.Situation]; // a book that names another one is not read
        if (fleet.For(roadNumber ?? situation.RoadNumbers.FirstOrDefault(), situation.Train) is not { } plan)
        {
            return null;
        }

        if (!plan.Facts.TryGetValue(search.Wanted, out Signal? wanted))
        {
            found.Error("W016", search.WantedSpan, $"there is no fact `{search.Wanted}`", Nearest.DidYouMean(search.Wanted, plan.Facts.Keys) ?? "describe it among the facts");
            return null;
        }

        return SituationStart.Bind(plan, situation, found) is null ? null : new(search, plan, situation, wanted);
    }
}
