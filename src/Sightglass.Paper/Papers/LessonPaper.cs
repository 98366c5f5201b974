using System.Collections.Immutable;
using Sightglass.Book.Model;
using Sightglass.Drawing.Plan;
using Sightglass.Paper.Document;
using Sightglass.Paper.Html;
using Sightglass.Training.Defects;
using Sightglass.Training.Lessons;

namespace Sightglass.Paper.Papers;

/// <summary>A lesson to read on a screen and to print: the whole first, then stop by stop, the sign-in sheet last. The same on its page, in a file that stands alone and as PDF.</summary>
public static class LessonPaper
{
    private const int MostSignatures = 40;

    /// <summary>The element of its page.</summary>
    public static string Write(LessonPlan plan) => HtmlPaper.Write(Of(plan));

    /// <param name="plan">The lesson.</param>
    /// <param name="address">Where its page is found; null for none.</param>
    public static PaperDocument Of(LessonPlan plan, string? address = null)
    {
        ArgumentNullException.ThrowIfNull(plan);
        ClassBook book = plan.Route.Book;
        List<PaperBlock> blocks =
        [
            new PaperBlock.Paragraph("A lesson round the machine", ParagraphSort.Eyebrow),
            new PaperBlock.Heading(1, LessonWords.Title(plan)),
            new PaperBlock.Paragraph(LessonWords.Summary(plan), ParagraphSort.Lead),
        ];
        if (book.Vehicles.Length == 1)
        {
            blocks.Add(Way(plan)); // A train is too long to be read from above.
        }

        if (address is not null)
        {
            blocks.Add(new PaperBlock.Code(address, "This lesson on its page."));
        }

        blocks.Add(new PaperBlock.Columns(List("To arrange", LessonWords.Arrange(plan)), Ticks("To bring", LessonWords.Bring(plan))));
        blocks.AddRange(List("Does not work today", plan.OtherDefects.Select(d => $"{(d.Item is { } item ? $"{PaperWords.Capital(item)}: " : "")}{d.Text} {d.Restriction}".Trim())));
        int at = 0;
        for (int i = 0; i < plan.Stations.Length; i++)
        {
            blocks.Add(new PaperBlock.Heading(2, plan.Stations.Length == 1 ? "Stop by stop" : $"Station {i + 1}, {LessonWords.Minutes(plan.Stations[i].Seconds)}"));
            foreach (LessonStop stop in plan.Stations[i].Stops)
            {
                blocks.AddRange(Stop(++at, stop));
            }
        }

        blocks.AddRange(List("If the machine is taken away", LessonWords.Fallback(plan)));
        blocks.AddRange(Signing(plan));
        return new PaperDocument($"Lesson: {LessonWords.Title(plan)}", PaperLook.Sheet, [.. blocks]) { Style = "lesson", Machine = PaperWords.Machine(book), Notice = PaperWords.Notice(book) };
    }

    private static PaperBlock.Picture Way(LessonPlan plan)
    {
        ImmutableDictionary<string, string>.Builder numbers = ImmutableDictionary.CreateBuilder<string, string>(StringComparer.Ordinal);
        int at = 0;
        foreach (LessonStop stop in plan.Stops)
        {
            numbers[stop.Stop.Place.Name] = PaperWords.Number(++at);
        }

        string drawing = PlanDrawing.Render(plan.Route.Book, new PlanOptions { Width = 820, Way = [.. plan.Route.Way], Numbers = numbers.ToImmutable() });
        string stops = string.Join(", ", plan.Stops.Select((s, i) => $"{i + 1} {s.Stop.Place.Name}"));
        return new PaperBlock.Picture(drawing, $"The way round {plan.Route.Book.Title} from above, front to the left. Stops: {stops}.")
        {
            Caption = PaperText.Strong("Plate.").And(" The way from above, front to the left, with the numbers of the stops."),
        };
    }

    private static IEnumerable<PaperBlock> Stop(int at, LessonStop stop)
    {
        string turns = stop.Turns > 1 ? $", {stop.Turns} turns, room for {stop.Stop.Place.Room}" : "";
        yield return new PaperBlock.Heading(3, PaperWords.Capital(stop.Stop.Place.Name)) { Number = PaperWords.Number(at), Aside = LessonWords.Minutes(stop.Seconds) + turns };
        foreach (Caution caution in stop.Cautions)
        {
            yield return new PaperBlock.Notice(caution.Word, caution.Text);
        }

        foreach (LessonPoint point in stop.Points)
        {
            PaperText says = PaperText.Strong(PaperWords.Capital(point.Item.Name) + ".").And(" " + string.Join(" ", point.Says));
            if (point.Hands)
            {
                says = says.And(" Hands:", RunStyle.Strong).And($" each in turn, and back as it was{(point.Permission is { } owner ? $", with permission of the {owner}" : "")}.");
            }

            yield return new PaperBlock.Paragraph(says) { Tag = "Show" };
            foreach (Defect defect in point.Defects)
            {
                yield return new PaperBlock.Paragraph(PaperText.Strong("Does not work today. ").And($"{defect.Text} {defect.Restriction}".Trim())) { Tag = "Mind" };
            }
        }

        foreach (Question question in stop.Questions)
        {
            yield return new PaperBlock.Paragraph(((PaperText)question.Asked).And(" " + question.Answer, RunStyle.Aside)) { Tag = "Ask" };
        }
    }

    private static IEnumerable<PaperBlock> Signing(LessonPlan plan)
    {
        yield return new PaperBlock.PageBreak();
        yield return new PaperBlock.Heading(2, "Sign-in sheet");
        yield return new PaperBlock.Paragraph($"{LessonWords.Title(plan)}. Date, place, who taught: ______________________________", ParagraphSort.Small);
        yield return new PaperBlock.Table(["Name", "Number", "Role", "Signature"], [.. Enumerable.Repeat(ImmutableArray<PaperText>.Empty, Math.Min(plan.Request.People + 2, MostSignatures))])
        {
            Widths = [3, 1.5, 2, 3],
        };
    }

    /// <summary>What is laid ready is ticked off.</summary>
    private static ImmutableArray<PaperBlock> Ticks(string title, IEnumerable<string> lines) =>
        [.. List(title, lines).Select(b => b is PaperBlock.Bullets bullets ? new PaperBlock.Ticks(bullets.Lines) : b)];

    private static ImmutableArray<PaperBlock> List(string title, IEnumerable<string> lines)
    {
        PaperText[] all = [.. lines.Select(l => (PaperText)l)];
        return all.Length == 0 ? [] : [new PaperBlock.Heading(2, title), new PaperBlock.Bullets([.. all])];
    }
}
