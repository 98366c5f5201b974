using System.Globalization;
using Sightglass.Book.Model;
using Sightglass.Training.Differences;

namespace Sightglass.Cli.Output;

/// <summary>The sheet of differences as text.</summary>
internal static class DifferencesText
{
    public static void Print(TextWriter output, ClassBook known, ClassBook other, IReadOnlyList<ItemDifference> differences)
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

        Modification[] modifications = [.. ModificationsOf(other)];
        if (modifications.Length > 0)
        {
            output.WriteLine();
            output.WriteLine("MODIFICATIONS");
            foreach (Modification m in modifications)
            {
                WalkText.Wrap(output, "  • ", $"{m.Name}{(m.Since is { } since ? $", since {since.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture)}" : "")}. {m.Text}");
            }
        }

        output.WriteLine();
        WalkText.Wrap(output, "", "Local rules, the maker's manual and qualified people decide.");
    }

    public static string NameOf(ClassBook book) => $"{book.Title} {book.RoadNumberInUse ?? "as described"}, edition {book.Edition}";

    /// <summary>Those of its road number, oldest first.</summary>
    public static IEnumerable<Modification> ModificationsOf(ClassBook book) =>
        book.RoadNumberInUse is { } number ? book.RoadNumbers[number].Modifications.OrderBy(m => m.Since ?? DateOnly.MinValue) : [];

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
        _ => "Built otherwise",
    };
}
