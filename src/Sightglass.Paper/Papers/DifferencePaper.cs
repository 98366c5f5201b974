using System.Collections.Immutable;
using Sightglass.Book.Model;
using Sightglass.Paper.Document;
using Sightglass.Training.Differences;

namespace Sightglass.Paper.Papers;

/// <summary>What is not as people know it, gravest first, with the habit that now hurts.</summary>
public static class DifferencePaper
{
    /// <param name="known">What the people know.</param>
    /// <param name="other">What they come to.</param>
    public static PaperDocument Of(ClassBook known, ClassBook other)
    {
        ImmutableArray<ItemDifference> differences = MachineComparison.Of(known, other);
        string to = NameOf(other);
        List<PaperBlock> blocks =
        [
            new PaperBlock.Paragraph("What differs", ParagraphSort.Eyebrow),
            new PaperBlock.Heading(1, PaperWords.Capital(to)),
            new PaperBlock.Paragraph($"For people who know {NameOf(known)}. {Count(differences.Length)}", ParagraphSort.Lead),
        ];
        foreach (IGrouping<DifferenceSort, ItemDifference> sort in differences.GroupBy(d => d.Sort))
        {
            blocks.Add(new PaperBlock.Heading(2, TitleOf(sort.Key)));
            blocks.AddRange(sort.SelectMany(Tell));
        }

        Modification[] modifications = other.RoadNumberInUse is { } number ? [.. other.RoadNumbers[number].Modifications.OrderBy(m => m.Since ?? DateOnly.MinValue)] : [];
        if (modifications.Length > 0)
        {
            blocks.Add(new PaperBlock.Heading(2, "Modifications"));
            blocks.Add(new PaperBlock.Bullets([.. modifications.Select(m => PaperText.Strong(m.Name).And($"{(m.Since is { } since ? $", since {PaperWords.Day(since)}" : "")}. {m.Text}"))]));
        }

        return new PaperDocument($"What differs: {to}", PaperLook.Sheet, [.. blocks]) { Style = "differences", Machine = PaperWords.Machine(other), Notice = PaperWords.Notice(other) };
    }

    private static IEnumerable<PaperBlock> Tell(ItemDifference difference)
    {
        Item item = difference.Item;
        yield return new PaperBlock.Heading(3, PaperWords.Capital(item.Name)) { Aside = item.Places.IsEmpty ? null : item.Places[0] };
        if (difference.Sort == DifferenceSort.New && item.Purpose.Length > 0)
        {
            yield return new PaperBlock.Paragraph(item.Purpose);
        }

        if (!difference.Changes.IsEmpty)
        {
            yield return new PaperBlock.Table(["What", "Known", "Here"], [.. difference.Changes.Select(c => ImmutableArray.Create<PaperText>(PaperWords.Capital(c.What), c.Was, c.Is))]) { Widths = [1.4, 3, 3], RowHeads = true };
        }

        if (difference.Habit is { } habit)
        {
            yield return new PaperBlock.Paragraph(PaperText.Strong("The habit that now hurts. ").And(habit));
        }

        if (difference is { Before: not null, After.Texts.Know: { Length: > 0 } know })
        {
            yield return new PaperBlock.Paragraph(know);
        }
    }

    private static string NameOf(ClassBook book) => book.RoadNumberInUse is { } number ? $"{book.Title} {number}, edition {book.Edition}" : $"{book.Title} as described, edition {book.Edition}";

    private static string Count(int differences) => differences switch
    {
        0 => "No item that people meet differs.",
        1 => "One item differs.",
        _ => $"{PaperWords.Number(differences)} items differ.",
    };

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
