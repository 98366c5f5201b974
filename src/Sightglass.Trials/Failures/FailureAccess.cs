using System.Collections.Immutable;
using Sightglass.Cards;
using Sightglass.Plant.Plans;

namespace Sightglass.Trials.Failures;

/// <summary>Where nobody gets any more, what lies farther, and what cannot be done without what is missing.</summary>
internal static class FailureAccess
{
    /// <summary>s by which a way is longer at least for it to be told.</summary>
    private const double Least = 0.5;

    /// <param name="failure">What is compared so far.</param>
    /// <param name="plan">Of the machine or the train.</param>
    /// <param name="cards">What the cards of its book need.</param>
    /// <param name="shut">Items that nobody gets by.</param>
    /// <param name="missing">What cannot be had.</param>
    public static Failure Add(Failure failure, Plan plan, ImmutableArray<CardNeeds> cards, ImmutableSortedSet<string> shut, ImmutableArray<Kit> missing) => failure with
    {
        Ways = shut.IsEmpty || failure.Item.Places.IsEmpty ? [] : Ways(plan, failure.Item.Places[0], shut),
        Cards = missing.IsEmpty ? [] : [.. cards.Where(c => c.Needs.Any(n => IsLacking(plan, missing, n))).Select(c => c.Title).Distinct()],
        Protections = missing.IsEmpty ? [] : [.. plan.Book.Protections.Values.Where(p => p.Needs.Any(n => missing.Any(k => k.Item.Name == n))).OrderBy(p => p.Span).Select(p => p.Name)],
    };

    private static bool IsLacking(Plan plan, ImmutableArray<Kit> missing, string need) =>
        missing.Any(k => k.Has(need)) && plan.Access.Kits.Where(k => k.Has(need)).All(missing.Contains);

    private static ImmutableArray<FailureWay> Ways(Plan plan, string place, ImmutableSortedSet<string> shut)
    {
        WayTable left = plan.Ways.Of(shut);
        int from = plan.Ways.IndexOf(place);
        return from < 0 ? [] :
        [
            .. plan.Ways.Places.Select((p, to) => new FailureWay(plan.Ways.Places[from], p, left.Seconds(from, to) - plan.Ways.Seconds(from, to)))
                .Where(w => w.Farther > Least)
                .OrderByDescending(w => w.Farther).ThenBy(w => plan.Ways.Seconds(from, plan.Ways.IndexOf(w.To.Name))),
        ];
    }
}
