using System.Globalization;
using Sightglass.Book.Model;
using Sightglass.Training.Routes;

namespace Sightglass.Cli.Output;

/// <summary>A walk for a purpose as text, to read on a terminal or to print.</summary>
internal static class RouteText
{
    public static void Print(TextWriter output, RoutePlan plan)
    {
        ClassBook book = plan.Book;
        output.WriteLine(book.RoadNumberInUse is { } number ? $"{book.Title} {number}" : book.Title);
        WalkText.Wrap(output, "", book.Notice);
        output.WriteLine();
        int items = plan.Stops.Sum(s => s.Items.Length);
        int stops = plan.Stops.Count(s => !s.Items.IsEmpty);
        WalkText.Wrap(output, "", $"{Capital(plan.Request.Purpose)}: {items} {(items == 1 ? "item" : "items")} at {stops} {(stops == 1 ? "stop" : "stops")}, {Metres(plan.Metres)} and {Minutes(plan.Seconds)} of walking. {Shortest(plan)}");
        Needs(output, "Before anybody goes there: ", plan.ToBeThere);
        Needs(output, "Before anything is touched: ", plan.ToTouch);
        WalkText.Wrap(output, "", "Local rules and qualified people decide what protection is needed.");
        for (int i = 0; i < plan.Stops.Length; i++)
        {
            Print(output, plan, i);
        }

        if (!plan.LeftOut.IsEmpty)
        {
            output.WriteLine();
            WalkText.Wrap(output, "", $"Not shown, for the group may go to none of their places: {string.Join(", ", plan.LeftOut.Select(i => i.Name))}.");
        }
    }

    private static void Print(TextWriter output, RoutePlan plan, int index)
    {
        RouteStop stop = plan.Stops[index];
        output.WriteLine();
        string way = index == 0 ? "the walk begins" : $"{Metres(stop.Metres)}, {stop.Seconds.ToString("0", CultureInfo.InvariantCulture)} s";
        string ends = stop.Items.IsEmpty && index == plan.Stops.Length - 1 ? ", the walk ends" : "";
        output.WriteLine($"{index + 1}. {stop.Place.Name.ToUpperInvariant()}  ({way}{ends})");
        if (!stop.Passed.IsEmpty)
        {
            WalkText.Wrap(output, "   ", $"On the way: {string.Join("; ", stop.Passed)}.");
        }

        WalkText.Wrap(output, "   ", stop.Place.Text);
        if (stop.TurnsOf(plan.Request.People) is > 1 and var turns && !stop.Items.IsEmpty)
        {
            output.WriteLine($"   Room for {stop.Place.Room}: {turns} turns.");
        }

        foreach (Hazard hazard in stop.Hazards.Concat(stop.OnTouch).OrderByDescending(h => h.Caution.Word))
        {
            string word = hazard.Caution.Word.ToString().ToUpperInvariant();
            int before = plan.Stops.Take(index).ToList().FindIndex(s => s.Hazards.Contains(hazard) || s.OnTouch.Contains(hazard));
            WalkText.Wrap(output, $"   {word}: ", before < 0 ? hazard.Caution.Text : $"{FirstSentence(hazard.Caution.Text)} As at stop {before + 1}.");
        }

        foreach (Item item in stop.Items)
        {
            WalkText.Wrap(output, $"   • {item.Name}: ", item.Normal.Length > 0 ? item.Normal : item.Purpose);
        }
    }

    private static void Needs(TextWriter output, string first, IEnumerable<(Protection Protection, IReadOnlyList<string> Places)> needs)
    {
        foreach ((Protection protection, IReadOnlyList<string> places) in needs)
        {
            WalkText.Wrap(output, first, $"{protection.Name}{(protection.AskedOf.Length > 0 ? $", asked of the {protection.AskedOf}" : "")} ({string.Join("; ", places)}).");
        }
    }

    private static string Shortest(RoutePlan plan) =>
        plan.IsShortest ? "No walk is shorter." : plan.LeastSeconds > 0 ? $"No walk takes less than {Minutes(plan.LeastSeconds)}." : "";

    private static string Metres(double metres) => string.Create(CultureInfo.InvariantCulture, $"{metres:0} m");

    private static string Minutes(double seconds)
    {
        int whole = (int)Math.Round(seconds);
        return whole < 60 ? $"{whole} s" : whole % 60 == 0 ? $"{whole / 60} min" : $"{whole / 60} min {whole % 60} s";
    }

    private static string FirstSentence(string text) => text.IndexOf(". ", StringComparison.Ordinal) is > 0 and var end ? text[..(end + 1)] : text;

    private static string Capital(string text) => char.ToUpperInvariant(text[0]) + text[1..];
}
