using System.Globalization;
using Sightglass.Book.Model;

namespace Sightglass.Cli.Output;

/// <summary>What happens if items fail, to read.</summary>
internal static class FailsText
{
    /// <summary>Changes told of one fault at most.</summary>
    private const int Most = 8;

    /// <param name="output">Where it is written.</param>
    /// <param name="book">Of the situation's train.</param>
    /// <param name="answer">What came out.</param>
    /// <param name="whole">One item in full, or a line for each.</param>
    public static void Print(TextWriter output, ClassBook book, FailsAnswer answer, bool whole)
    {
        output.WriteLine(book.RoadNumberInUse is { } number ? $"{book.Title} {number}" : book.Title);
        WalkText.Wrap(output, "", book.Notice);
        output.WriteLine();
        WalkText.Wrap(output, "", string.Create(CultureInfo.InvariantCulture, $"In \"{answer.Situation}\", {answer.AfterS:0} s after it has failed:"));
        foreach (FailsAnswer.Row row in answer.Items)
        {
            if (whole)
            {
                Whole(output, row);
            }
            else
            {
                WalkText.Wrap(output, $"  {row.Item}: ", Short(row));
            }
        }

        if (!whole)
        {
            output.WriteLine();
            output.WriteLine($"{answer.Items.Length} items that people meet: {answer.Items.Count(r => r.Faults.Any(f => !f.Hidden))} show a failure, {answer.Items.Count(r => !r.Faults.IsEmpty && r.Faults.All(f => f.Hidden))} fail unseen, {answer.Items.Count(r => r.Faults.IsEmpty && !r.Holds.IsEmpty)} fail as what they hold, {answer.Items.Count(r => r.Faults.IsEmpty && r.Holds.IsEmpty && r.Told is not null)} are told by the book, {answer.Items.Count(r => r.Faults.IsEmpty && r.Holds.IsEmpty && r.Told is null)} are described only.");
        }

        WalkText.Wrap(output, "", "Local rules, the maker's manual and qualified people decide.");
    }

    private static string Short(FailsAnswer.Row row) =>
        !row.Faults.IsEmpty ? string.Join("; ", row.Faults.Select(f => $"{f.Fault} ({Count(f)})"))
        : !row.Holds.IsEmpty ? $"as {string.Join(", ", row.Holds)} fail"
        : row.Told is null ? "described, not alive"
        : "told by the book, not computed";

    private static string Count(FailsAnswer.One fault) => fault.Trouble is not null ? "cannot be run" : fault.Hidden ? "nobody sees it" : $"{fault.Told.Length} changes";

    private static void Whole(TextWriter output, FailsAnswer.Row row)
    {
        if (row.Told is { } said)
        {
            WalkText.Wrap(output, $"  {row.Item}: ", row.Faults.IsEmpty ? $"{said} (Told by the book, not computed.)" : said);
        }

        if (!row.Holds.IsEmpty)
        {
            WalkText.Wrap(output, $"  {row.Item} fails as one of these does: ", string.Join(", ", row.Holds) + ".");
        }

        if (row.Faults.IsEmpty && row.Holds.IsEmpty && row.Told is null)
        {
            output.WriteLine($"  {row.Item} is described and not alive: nothing is worked out of it.");
        }

        foreach (FailsAnswer.One fault in row.Faults)
        {
            output.WriteLine();
            output.WriteLine($"{row.Item}: {fault.Fault}");
            foreach (string told in fault.Told.Take(Most))
            {
                WalkText.Wrap(output, "  ", told);
            }

            int more = fault.Told.Length - Most;
            if (more > 0)
            {
                output.WriteLine($"  and {more} more");
            }

            if (fault.Hidden)
            {
                output.WriteLine("  Nothing that anybody sees is otherwise. It waits until it is needed.");
            }
            else if (fault.Trouble is { } trouble)
            {
                WalkText.Wrap(output, "  cannot be run to the end: ", trouble);
            }
        }
    }
}
