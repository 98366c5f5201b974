using System.Globalization;
using Sightglass.Basics.Language;
using Sightglass.Book.Model;

namespace Sightglass.Training.Lessons;

/// <summary>What a lesson's paper, text and answer say in the same words.</summary>
public static class LessonWords
{
    /// <summary>Who decides.</summary>
    public static string Decide => Say.It("Local rules, the maker’s manual and qualified people decide what is done at the machine.");

    public static string Title(LessonPlan plan)
    {
        ArgumentNullException.ThrowIfNull(plan);
        return Say.Begin(plan.Request.Route.Said);
    }

    /// <summary>Whole minutes, one at least.</summary>
    public static string Minutes(double seconds) => string.Create(CultureInfo.InvariantCulture, $"{Math.Max(1, Math.Round(seconds / 60)):0}\u00A0min");

    /// <summary>How long it takes and how many groups go round, and whether it fits.</summary>
    public static string Summary(LessonPlan plan)
    {
        ArgumentNullException.ThrowIfNull(plan);
        int stations = plan.Stations.Length;
        List<string> said =
        [
            Say.With($"{Minutes(plan.Seconds)}, greeting and end included."),
            stations == 1
                ? Say.With($"{plan.Request.People} people go round together.")
                : Say.With($"{plan.Request.People} people in {stations} groups of up to {plan.GroupSize} go round {stations} stations, {Minutes(plan.LongestStation)} at each."),
            Say.With($"{plan.Route.Metres:0}\u00A0m of walking."),
        ];
        if (plan.GroupsWaiting > 0)
        {
            said.Add(Say.Of(
                plan.GroupsWaiting,
                $"Before each change one group waits, up to {Minutes(plan.LongestWait)}; every group waits {Minutes(plan.WaitSeconds)} in all.",
                $"Before each change {plan.GroupsWaiting} groups wait, up to {Minutes(plan.LongestWait)}; every group waits {Minutes(plan.WaitSeconds)} in all."));
        }

        if (plan.SecondsTooLong > 0)
        {
            said.Add(Say.With($"That is {Minutes(plan.SecondsTooLong)} more than there are."));
            said.Add(Say.With($"The longest stops: {string.Join(", ", plan.Stops.OrderByDescending(s => s.Seconds).Take(3).Select(s => $"{Say.Book(s.Stop.Place.Name)} ({Minutes(s.Seconds)})"))}."));
        }

        return string.Join(' ', said);
    }

    /// <summary>What would make it shorter, a sentence each; each was planned.</summary>
    public static IEnumerable<string> Shorter(LessonPlan plan)
    {
        ArgumentNullException.ThrowIfNull(plan);
        if (plan.SecondsTooLong > 0 && plan.Advice.IsEmpty)
        {
            yield return Say.It("No single change of stations, depth or stops helps by a minute or more: choose a walk that shows less.");
        }

        foreach (LessonChange change in plan.Advice)
        {
            string gain = plan.SecondsTooLong > 0 && change.Fits ? Say.With($"{Minutes(change.SecondsLess)} less, and it fits") : Say.With($"{Minutes(change.SecondsLess)} less");
            yield return change switch
            {
                LessonChange.Stations s when s.Count > plan.Stations.Length => Say.With($"With {s.Count} stations, somebody speaking at each: {gain}."),
                LessonChange.Stations s => Say.Of(s.Count, $"With one station: {gain}.", $"With {s.Count} stations: {gain}."),
                LessonChange.Shallower s => Say.With($"With the depth “{Say.Word(s.Depth.ToString().ToLowerInvariant())}”: {gain}."),
                LessonChange.Without w => Say.With($"Without the stop “{w.Place}”: {gain}."),
                _ => throw new System.Diagnostics.UnreachableException(),
            };
        }
    }

    /// <summary>Protections to arrange before the lesson, a sentence each.</summary>
    public static IEnumerable<string> Arrange(LessonPlan plan)
    {
        foreach ((Protection protection, IReadOnlyList<string> places) in plan.Route.ToBeThere)
        {
            yield return Say.With($"{Named(protection)}, before anybody goes to: {Say.Names(places, "; ")}.");
        }

        foreach ((Protection protection, _) in plan.Route.ToTouch)
        {
            yield return Say.With($"{Named(protection)}, before anybody touches: {Say.Names(plan.Route.TouchedUnder(protection), "; ")}. Until then, hands off.");
        }

        foreach (string owner in plan.Stops.SelectMany(s => s.Points).Select(p => p.Permission).OfType<string>().Distinct(StringComparer.Ordinal))
        {
            yield return Say.With($"Permission of the {owner} for: {Say.Names(plan.Stops.SelectMany(s => s.Points).Where(p => p.Permission == owner).Select(p => p.Item.Name), "; ")}.");
        }

        foreach (IGrouping<string, string> told in plan.Stops.SelectMany(s => s.Points).Where(p => p.Hands).SelectMany(p => p.Item.Authority?.Told ?? [], (p, role) => (role, p.Item.Name))
            .Where(t => t.role != plan.Request.Audience).GroupBy(t => t.role, t => t.Name, StringComparer.Ordinal))
        {
            yield return Say.With($"The {told.Key} is told before hands try: {Say.Names(told, "; ")}.");
        }
    }

    /// <summary>What to bring: the author's list, and what protections are set with.</summary>
    public static IEnumerable<string> Bring(LessonPlan plan)
    {
        IEnumerable<string> set = plan.Route.ToBeThere.Concat(plan.Route.ToTouch).Select(n => n.Protection).Where(p => p.Sort != ProtectionSort.Asked).Select(p => p.Name);
        return plan.Request.Kit.Concat(set).Select(t => Say.Book(t)).Append(Say.With($"this paper, {plan.Request.People} pocket cards, the sign-in sheet, a pen")).Distinct(StringComparer.Ordinal);
    }

    /// <summary>What can be done in a room when the machine is taken away.</summary>
    public static IEnumerable<string> Fallback(LessonPlan plan)
    {
        ClassBook book = plan.Route.Book;
        yield return Say.With($"The strip on the wall (page Walk) in the same order of stops: {Say.Names(plan.Stops.Select(s => s.Stop.Place.Name), "; ")}.");
        string[] alive = [.. plan.Stops.SelectMany(s => s.Points).Select(p => p.Item.System).OfType<string>().Distinct(StringComparer.Ordinal).Where(s => book.Systems[s].Alive)];
        if (alive.Length > 0)
        {
            yield return Say.With($"Alive on the page Machine: {Say.Names(alive)}. Controls are operated there instead of by hand.");
        }

        string[] hands = [.. plan.Stops.SelectMany(s => s.Points).Where(p => p.Hands).Select(p => p.Item.Name)];
        if (hands.Length > 0)
        {
            yield return Say.With($"Not replaced by a room, so make it good at the machine: hands on {Say.Names(hands, "; ")}.");
        }
    }

    private static string Named(Protection protection) =>
        Say.Begin(protection.AskedOf.Length > 0 ? Say.With($"{protection.Name}, asked of the {protection.AskedOf}") : Say.Book(protection.Name));
}
