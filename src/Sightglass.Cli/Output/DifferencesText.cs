using System.Globalization;
using Sightglass.Book.Model;
using Sightglass.Training.Differences;

namespace Sightglass.Cli.Output;

/// <summary>The sheet of differences as text.</summary>
internal static class DifferencesText
{
    public static void Print(TextWriter output, ClassBook known, ClassBook other, IReadOnlyList<ItemDifference> differences, MachineStatus status)
    {
        output.WriteLine($"{NameOf(other)}, for people who know {NameOf(known)}");
        WalkText.Wrap(output, "", other.Notice);
        output.WriteLine();
        output.WriteLine(differences.Count == 0 ? "No item that people meet differs." : $"{differences.Count} {(differences.Count == 1 ? "item differs" : "items differ")}.");
        foreach (IGrouping<DifferenceSort, ItemDifference> sort in differences.GroupBy(d => d.Sort))
        {
            output.WriteLine();
            output.WriteLine(TitleOf(sort.Key).ToUpperInvariant());
            foreach (ItemDifference difference in sort)
            {
                Print(output, difference);
            }
        }

        Print(output, status);
        output.WriteLine();
        WalkText.Wrap(output, "", "Local rules, the maker's manual and qualified people decide.");
    }

    public static string NameOf(ClassBook book) => $"{book.Title} {book.RoadNumberInUse ?? "as described"}, edition {book.Edition}";

    /// <summary>What people bring with them, as text.</summary>
    public static void Print(TextWriter output, ClassBook book, Habit habit, MachineStatus status)
    {
        output.WriteLine($"{NameOf(book)}, for people who come from: {habit.Name}");
        WalkText.Wrap(output, "", book.Notice);
        WalkText.Wrap(output, "", habit.Text);
        output.WriteLine();
        foreach (HabitLine line in habit.Lines)
        {
            WalkText.Wrap(output, "  • ", $"{line.Item}{(book.Items[line.Item].Places is [{ } place, ..] ? $" ({place})" : "")}");
            WalkText.Wrap(output, "      there: ", line.Was);
            WalkText.Wrap(output, "      here: ", line.Here);
            WalkText.Wrap(output, "      Habit: ", line.Hurts);
        }

        Print(output, status);
        output.WriteLine();
        WalkText.Wrap(output, "", "Local rules, the maker's manual and qualified people decide.");
    }

    private static void Print(TextWriter output, MachineStatus status)
    {
        Lines("MODIFICATIONS", status.Done.Select(m => $"{m.Name}{(m.Since is { } since ? $", since {Day(since)}" : "")}. {m.Text}"));
        Lines("MODIFICATIONS TO COME", status.ToCome.Select(m => $"{m.Name}, from {Day(m.Since!.Value)}. {m.Text}"));
        Lines($"DEFECTS OPEN ON {Day(status.Day)}", status.Defects.Select(d => $"{(d.Item is { } item ? $"{item}: " : "")}{d.Text}{(d.Restriction.Length > 0 ? $" {d.Restriction}" : "")} Found by {d.FoundBy} on {Day(d.FoundOn)}."));

        void Lines(string title, IEnumerable<string> lines)
        {
            foreach ((string line, int i) in lines.Select((l, i) => (l, i)))
            {
                if (i == 0)
                {
                    output.WriteLine();
                    output.WriteLine(title);
                }

                WalkText.Wrap(output, "  • ", line);
            }
        }
    }

    private static string Day(DateOnly day) => day.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture);

    private static void Print(TextWriter output, ItemDifference difference)
    {
        Item item = difference.Item;
        WalkText.Wrap(output, "  • ", $"{item.Name}{(item.Places.IsEmpty ? "" : $" ({item.Places[0]})")}{(difference.Sort == DifferenceSort.New && item.Purpose.Length > 0 ? $": {item.Purpose}" : "")}");
        foreach (Change change in difference.Changes)
        {
            WalkText.Wrap(output, $"      {change.What}: ", change.Was.Length == 0 ? change.Is : change.Is.Length == 0 ? $"{change.Was} before, now none" : $"{change.Was} → {change.Is}");
        }

        if (difference.Habit is { } habit)
        {
            WalkText.Wrap(output, "      Habit: ", habit);
        }

        if (difference is { Before: not null, After.Texts.Know: { Length: > 0 } know })
        {
            WalkText.Wrap(output, "      Know: ", know);
        }
    }

    private static string TitleOf(DifferenceSort sort) => sort switch
    {
        DifferenceSort.WorksOtherwise => "Works otherwise",
        DifferenceSort.ShowsOtherwise => "Shows something else",
        DifferenceSort.New => "New",
        DifferenceSort.Gone => "Gone",
        DifferenceSort.Moved => "Moved",
        DifferenceSort.LabelledOtherwise => "Labelled otherwise",
        _ => "Built otherwise",
    };
}
