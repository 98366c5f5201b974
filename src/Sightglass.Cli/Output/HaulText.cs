using Sightglass.Basics.Language;
using Sightglass.Book.Model;
using Sightglass.Paper.Papers;
using Sightglass.World.Hauls;

namespace Sightglass.Cli.Output;

/// <summary>Runs over routes in a terminal.</summary>
internal static class HaulText
{
    public static void List(TextWriter output, ClassBook book)
    {
        foreach (Route route in book.Routes.Values.OrderBy(r => r.Span))
        {
            WalkText.Wrap(output, $"{Say.Book(route.Name)}: ", $"{CalcText.Plain(HaulUnits.Of(book).Along(route.Length))}. {Say.Book(route.Text)}");
        }

        if (book.Routes.IsEmpty)
        {
            output.WriteLine(Say.It("The book has no routes yet."));
        }
    }

    public static void Print(TextWriter output, HaulResult run)
    {
        ClassBook book = run.Train.Plan.Book;
        HaulTold told = new(run);
        output.WriteLine(book.RoadNumberInUse is { } number ? $"{Say.Book(book.Title)} {number}" : Say.Book(book.Title));
        WalkText.Wrap(output, "", Say.Book(book.Notice));
        output.WriteLine();
        WalkText.Wrap(output, $"{Say.Book(run.Request.Route.Name)}: ", Plain(told.Asked));
        foreach (string sentence in told.Verdict)
        {
            WalkText.Wrap(output, "", Plain(sentence));
        }

        foreach (HaulPart part in told.Parts())
        {
            output.WriteLine();
            output.WriteLine(part.Heading);
            Table(output, part);
            foreach (string sentence in part.Sentences)
            {
                WalkText.Wrap(output, "  ", Plain(sentence));
            }
        }

        output.WriteLine();
        WalkText.Wrap(output, "", HaulTold.Source);
        WalkText.Wrap(output, "", HaulTold.Caution);
    }

    private static void Table(TextWriter output, HaulPart part)
    {
        if (part.Rows.IsEmpty)
        {
            return;
        }

        string[][] rows = [[.. part.Columns], .. part.Rows.Select(r => r.Select(Plain).ToArray())];
        int[] widths = [.. part.Columns.Select((_, i) => rows.Max(r => r[i].Length))];
        foreach (string[] row in rows)
        {
            output.WriteLine(("  " + string.Join("  ", row.Select((cell, i) => i == 0 ? cell.PadRight(widths[i]) : cell.PadLeft(widths[i])))).TrimEnd());
        }
    }

    private static string Plain(string text) => CalcText.Plain(text);
}
