using System.Collections.Immutable;
using Sightglass.Basics.Language;
using Sightglass.Book.Model;
using Sightglass.Paper.Document;
using Sightglass.Training.Differences;

namespace Sightglass.Paper.Papers;

/// <summary>What is not as people know it, gravest first, with the habit that now hurts.</summary>
public static class DifferencePaper
{
    /// <param name="known">What the people know.</param>
    /// <param name="other">What they come to.</param>
    /// <param name="status">How that stands on a day; null for nothing.</param>
    public static PaperDocument Of(ClassBook known, ClassBook other, MachineStatus? status = null)
    {
        ImmutableArray<ItemDifference> differences = MachineComparison.Of(known, other);
        string to = NameOf(other);
        List<PaperBlock> blocks =
        [
            new PaperBlock.Paragraph(Say.It("What differs"), ParagraphSort.Eyebrow),
            new PaperBlock.Heading(1, PaperWords.Capital(to)),
            new PaperBlock.Paragraph(Say.With($"For people who know {NameOf(known)}. {Count(differences.Length)}"), ParagraphSort.Lead),
        ];
        foreach (IGrouping<DifferenceSort, ItemDifference> sort in differences.GroupBy(d => d.Sort))
        {
            blocks.Add(new PaperBlock.Heading(2, TitleOf(sort.Key)));
            blocks.AddRange(sort.Key is DifferenceSort.New or DifferenceSort.Gone ? [Listed(sort)] : sort.SelectMany(Tell));
        }

        blocks.AddRange(Tell(status));
        return new PaperDocument(Say.With($"What differs: {to}"), PaperLook.Sheet, [.. blocks]) { Style = "differences", Machine = PaperWords.Machine(other), Notice = PaperWords.Notice(other) };
    }

    /// <param name="book">What the people come to.</param>
    /// <param name="habit">What they bring with them.</param>
    /// <param name="status">How the machine stands on a day; null for nothing.</param>
    public static PaperDocument Of(ClassBook book, Habit habit, MachineStatus? status = null)
    {
        ArgumentNullException.ThrowIfNull(habit);
        string to = NameOf(book);
        List<PaperBlock> blocks =
        [
            new PaperBlock.Paragraph(Say.It("Old habits"), ParagraphSort.Eyebrow),
            new PaperBlock.Heading(1, PaperWords.Capital(to)),
            new PaperBlock.Paragraph(Say.With($"For people who come from: {habit.Name}. {habit.Text}"), ParagraphSort.Lead),
        ];
        if (!habit.Lines.IsEmpty)
        {
            blocks.Add(new PaperBlock.Heading(2, Say.It("What is otherwise here")));
        }

        foreach (HabitLine line in habit.Lines)
        {
            blocks.Add(new PaperBlock.Heading(3, PaperWords.Named(line.Item)) { Aside = book.Items[line.Item].Places is [{ } place, ..] ? Say.Book(place) : null });
            blocks.Add(new PaperBlock.Table([Say.It("There"), Say.It("Here")], [[Say.Book(line.Was), Say.Book(line.Here)]]) { Widths = [1, 1] });
            if (line.Hurts.Length > 0)
            {
                blocks.Add(new PaperBlock.Paragraph(PaperText.Strong(Say.It("The habit that now hurts.") + " ").And(Say.Book(line.Hurts))));
            }
        }

        blocks.AddRange(Tell(status));
        return new PaperDocument(Say.With($"Old habits: {to}"), PaperLook.Sheet, [.. blocks]) { Style = "differences", Machine = PaperWords.Machine(book), Notice = PaperWords.Notice(book) };
    }

    private static IEnumerable<PaperBlock> Tell(MachineStatus? status)
    {
        (string Title, PaperText[] Lines)[] parts = status is null ? [] :
        [
            (Say.It("Modifications"), [.. status.Done.Select(m => PaperText.Strong(Say.Book(m.Name)).And($"{(m.Since is { } since ? Say.With($", since {PaperWords.Day(since)}") : "")}. {Say.Book(m.Text)}"))]),
            (Say.It("Modifications to come"), [.. status.ToCome.Select(m => PaperText.Strong(Say.Book(m.Name)).And($"{Say.With($", from {PaperWords.Day(m.Since!.Value)}")}. {Say.Book(m.Text)}"))]),
            (Say.With($"Defects open on {PaperWords.Day(status.Day)}"), [.. status.Defects.Select(d => PaperText.Strong(d.Item is { } item ? PaperWords.Named(item) : Say.Begin(Say.It("the machine"))).And($". {d.Text} {d.Restriction}".TrimEnd() + " " + Say.With($"Found by {d.FoundBy} on {PaperWords.Day(d.FoundOn)}.")))]),
        ];
        return parts.Where(p => p.Lines.Length > 0).SelectMany(p => new PaperBlock[] { new PaperBlock.Heading(2, p.Title), new PaperBlock.Bullets([.. p.Lines]) });
    }

    /// <summary>What is only here, or only there: there is nothing to compare it with, so that a row says it.</summary>
    private static PaperBlock.Table Listed(IGrouping<DifferenceSort, ItemDifference> sort) =>
        new([Say.It("Item"), Say.It("Where"), sort.Key == DifferenceSort.New ? Say.It("What for") : Say.It("The habit that now hurts")], [.. sort.Select(Row)]) { Widths = [2.6, 2, 4], RowHeads = true };

    private static ImmutableArray<PaperText> Row(ItemDifference difference)
    {
        Item item = difference.Item;
        IEnumerable<string> says = difference.Changes.Select(c => $"{PaperWords.Capital(Say.Word(c.What))} {c.Is}.").Prepend(difference.Sort == DifferenceSort.New ? Say.Book(item.Purpose) : difference.Habit ?? "");
        return [PaperWords.Named(item.Name), item.Places.IsEmpty ? "" : Say.Book(item.Places[0]), string.Join(' ', says.Where(s => s.Length > 0))];
    }

    private static IEnumerable<PaperBlock> Tell(ItemDifference difference)
    {
        Item item = difference.Item;
        yield return new PaperBlock.Heading(3, PaperWords.Named(item.Name)) { Aside = item.Places.IsEmpty ? null : Say.Book(item.Places[0]) };
        if (!difference.Changes.IsEmpty)
        {
            yield return new PaperBlock.Table([Say.It("What"), Say.It("Known"), Say.It("Here")], [.. difference.Changes.Select(c => ImmutableArray.Create<PaperText>(PaperWords.Capital(Say.Word(c.What)), c.Was, c.Is))]) { Widths = [1.4, 3, 3], RowHeads = true };
        }

        if (difference.Habit is { } habit)
        {
            yield return new PaperBlock.Paragraph(PaperText.Strong(Say.It("The habit that now hurts.") + " ").And(habit));
        }

        if (difference is { Before: not null, After.Texts.Know: { Length: > 0 } know })
        {
            yield return new PaperBlock.Paragraph(Say.Book(know));
        }
    }

    private static string NameOf(ClassBook book) => book.RoadNumberInUse is null ? Say.With($"{book.Title} as described, edition {book.Edition}") : PaperWords.Machine(book);

    private static string Count(int differences) => differences switch
    {
        0 => Say.It("No item that people meet differs."),
        1 => Say.It("One item differs."),
        _ => Say.With($"{differences} items differ."),
    };

    private static string TitleOf(DifferenceSort sort) => sort switch
    {
        DifferenceSort.WorksOtherwise => Say.As("difference", "Works otherwise"),
        DifferenceSort.ShowsOtherwise => Say.As("difference", "Shows something else"),
        DifferenceSort.New => Say.As("difference", "New"),
        DifferenceSort.Gone => Say.As("difference", "Gone"),
        DifferenceSort.Moved => Say.As("difference", "Moved"),
        DifferenceSort.LabelledOtherwise => Say.As("difference", "Labelled otherwise"),
        _ => Say.As("difference", "Built otherwise"),
    };
}
