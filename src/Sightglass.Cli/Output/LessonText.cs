using Sightglass.Book.Model;
using Sightglass.Training.Lessons;

namespace Sightglass.Cli.Output;

/// <summary>A lesson as text.</summary>
internal static class LessonText
{
    public static void Print(TextWriter output, LessonPlan plan)
    {
        ClassBook book = plan.Route.Book;
        output.WriteLine($"{LessonWords.Title(plan)}, on {book.Title}{(book.RoadNumberInUse is { } number ? $" {number}" : "")}");
        WalkText.Wrap(output, "", book.Notice);
        output.WriteLine();
        WalkText.Wrap(output, "", LessonWords.Summary(plan));
        List(output, "What would make it shorter", LessonWords.Shorter(plan));
        List(output, "To arrange", LessonWords.Arrange(plan));
        List(output, "To bring", LessonWords.Bring(plan));
        int at = 1;
        for (int i = 0; i < plan.Stations.Length; i++)
        {
            if (plan.Stations.Length > 1)
            {
                output.WriteLine();
                output.WriteLine($"STATION {i + 1}  ({LessonWords.Minutes(plan.Stations[i].Seconds)})");
            }

            foreach (LessonStop stop in plan.Stations[i].Stops)
            {
                Print(output, at++, stop);
            }
        }

        List(output, "If the machine is taken away", LessonWords.Fallback(plan));
        output.WriteLine();
        WalkText.Wrap(output, "", LessonWords.Decide);
    }

    private static void Print(TextWriter output, int at, LessonStop stop)
    {
        output.WriteLine();
        output.WriteLine($"{at}. {stop.Stop.Place.Name.ToUpperInvariant()}  ({LessonWords.Minutes(stop.Seconds)}{(stop.Turns > 1 ? $", {stop.Turns} turns: room for {stop.Stop.Place.Room}" : "")})");
        foreach ((SignalWord word, string text) in stop.Notices)
        {
            WalkText.Wrap(output, $"   {word.ToString().ToUpperInvariant()}: ", text);
        }

        foreach (LessonPoint point in stop.Points)
        {
            WalkText.Wrap(output, $"   • {point.Item.Name}: ", string.Join(" ", point.Said));
            if (point.Hands)
            {
                WalkText.Wrap(output, "     Hands: ", $"each in turn, and back as it was{(point.Permission is { } owner ? $", with permission of the {owner}" : "")}.");
            }
        }

        foreach (Question question in stop.Questions)
        {
            WalkText.Wrap(output, "   Ask: ", $"{question.Asked} ({question.Answer})");
        }
    }

    private static void List(TextWriter output, string title, IEnumerable<string> lines)
    {
        string[] all = [.. lines];
        if (all.Length == 0)
        {
            return;
        }

        output.WriteLine();
        output.WriteLine(title);
        foreach (string line in all)
        {
            WalkText.Wrap(output, "   • ", line);
        }
    }
}
