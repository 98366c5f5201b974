using System.Collections.Immutable;
using Sightglass.Basics.Language;
using Sightglass.Book.Model;
using Sightglass.Drawing.Plan;
using Sightglass.Paper.Document;
using Sightglass.Paper.Html;
using Sightglass.Paper.Pdf;
using Sightglass.Paper.Photos;
using Sightglass.Training.Defects;
using Sightglass.Training.Lessons;

namespace Sightglass.Paper.Papers;

/// <summary>A lesson to read on a screen and to print: the whole first, then stop by stop, the sign-in sheet last. The same on its page, in a file that stands alone and as PDF.</summary>
public static class LessonPaper
{
    private const int MostSignatures = 40;

    /// <summary>Width of the way from above, pixels.</summary>
    private const double WayWidth = 820;

    /// <summary>Numbers at its stops, pt, where print is not large.</summary>
    private const double WayNumbers = 8.5;

    /// <summary>The element of its page.</summary>
    /// <param name="plan">The lesson.</param>
    /// <param name="album">Pictures of the machine; null for none.</param>
    public static string Write(LessonPlan plan, PaperAlbum? album = null) => HtmlPaper.Write(Of(plan, album: album));

    /// <param name="plan">The lesson.</param>
    /// <param name="address">Where its page is found; null for none.</param>
    /// <param name="on">The sheet that it is for; the usual one where null.</param>
    /// <param name="album">Pictures of the machine; null for none.</param>
    public static PaperDocument Of(LessonPlan plan, string? address = null, PaperSheet? on = null, PaperAlbum? album = null)
    {
        ArgumentNullException.ThrowIfNull(plan);
        ClassBook book = plan.Route.Book;
        List<PaperBlock> blocks =
        [
            new PaperBlock.Paragraph(Say.It("A lesson round the machine"), ParagraphSort.Eyebrow),
            new PaperBlock.Heading(1, LessonWords.Title(plan)),
            new PaperBlock.Paragraph(LessonWords.Summary(plan), ParagraphSort.Lead),
        ];
        if (book.Vehicles.Length == 1)
        {
            blocks.Add(Way(plan, on ?? PaperSheet.Default(PaperLook.Sheet))); // A train is too long to be read from above.
        }

        if (address is not null)
        {
            blocks.Add(new PaperBlock.Code(address, Say.It("This lesson on its page.")));
        }

        blocks.Add(new PaperBlock.Columns(List(Say.It("To arrange"), LessonWords.Arrange(plan)), Ticks(Say.It("To bring"), LessonWords.Bring(plan))));
        blocks.AddRange(List(Say.It("Does not work today"), plan.OtherDefects.Select(d => $"{(d.Item is { } item ? $"{PaperWords.Named(item)}: " : "")}{d.Text} {d.Restriction}".Trim())));
        int at = 0;
        for (int i = 0; i < plan.Stations.Length; i++)
        {
            blocks.Add(new PaperBlock.Heading(2, plan.Stations.Length == 1 ? Say.It("Stop by stop") : Say.With($"Station {i + 1}, {LessonWords.Minutes(plan.Stations[i].Seconds)}")));
            foreach (LessonStop stop in plan.Stations[i].Stops)
            {
                blocks.AddRange(Stop(++at, stop, album));
            }
        }

        blocks.AddRange(List(Say.It("If the machine is taken away"), LessonWords.Fallback(plan)));
        blocks.AddRange(Signing(plan));
        return new PaperDocument(Say.With($"Lesson: {LessonWords.Title(plan)}"), PaperLook.Sheet, [.. blocks]) { Style = "lesson", Machine = PaperWords.Machine(book), Notice = PaperWords.Notice(book) };
    }

    private static PaperBlock.Picture Way(LessonPlan plan, PaperSheet on)
    {
        PdfRoom room = PdfRoom.Of(on, PaperLook.Sheet, "");
        double label = (on.Large ? room.Type.Small : WayNumbers) * WayWidth / room.Width / PlanDrawing.NumberSize;
        ImmutableDictionary<string, string>.Builder numbers = ImmutableDictionary.CreateBuilder<string, string>(StringComparer.Ordinal);
        int at = 0;
        foreach (LessonStop stop in plan.Stops)
        {
            numbers[stop.Stop.Place.Name] = PaperWords.Number(++at);
        }

        string drawing = PlanDrawing.Render(plan.Route.Book, new PlanOptions { Width = WayWidth, LabelSize = Math.Round(label, 1, MidpointRounding.ToPositiveInfinity), Way = [.. plan.Route.Way], Numbers = numbers.ToImmutable() });
        string stops = string.Join(", ", plan.Stops.Select((s, i) => $"{i + 1} {Say.Book(s.Stop.Place.Name)}"));
        return new PaperBlock.Picture(drawing, Say.With($"The way round {plan.Route.Book.Title} from above, front to the left. Stops: {stops}."))
        {
            Caption = PaperText.Strong(Say.It("Plate.")).And(" " + Say.It("The way from above, front to the left, with the numbers of the stops.")),
        };
    }

    private static IEnumerable<PaperBlock> Stop(int at, LessonStop stop, PaperAlbum? album)
    {
        string turns = stop.Turns > 1 ? Say.With($", {stop.Turns} turns, room for {stop.Stop.Place.Room}") : "";
        yield return new PaperBlock.Heading(3, PaperWords.Named(stop.Stop.Place.Name)) { Number = PaperWords.Number(at), Aside = LessonWords.Minutes(stop.Seconds) + turns };
        foreach ((SignalWord word, string text) in stop.Notices)
        {
            yield return new PaperBlock.Notice(word, text);
        }

        if (album?.Of(stop.Points.Select(p => p.Item.Name), 1) is { IsEmpty: false } photo)
        {
            yield return new PaperBlock.Photos(photo);
        }

        foreach (LessonPoint point in stop.Points)
        {
            PaperText says = PaperText.Strong(PaperWords.Named(point.Item.Name) + ".").And(" " + string.Join(' ', point.Said));
            if (point.Hands)
            {
                string turn = point.Permission is { } owner ? Say.With($"each in turn, and back as it was, with permission of the {owner}.") : Say.It("each in turn, and back as it was.");
                says = says.And(" " + Say.It("Hands:"), RunStyle.Strong).And(" " + turn);
            }

            yield return new PaperBlock.Paragraph(says) { Tag = Say.As("margin", "Show") };
            foreach (Defect defect in point.Defects)
            {
                yield return new PaperBlock.Paragraph(PaperText.Strong(Say.It("Does not work today.") + " ").And($"{defect.Text} {defect.Restriction}".Trim())) { Tag = Say.As("margin", "Mind") };
            }
        }

        foreach (Question question in stop.Questions)
        {
            yield return new PaperBlock.Paragraph(((PaperText)Say.Book(question.Asked)).And(" " + Say.Book(question.Answer), RunStyle.Aside)) { Tag = Say.As("margin", "Ask") };
        }
    }

    private static IEnumerable<PaperBlock> Signing(LessonPlan plan)
    {
        yield return new PaperBlock.PageBreak();
        yield return new PaperBlock.Heading(2, Say.It("Sign-in sheet"));
        yield return new PaperBlock.Paragraph(Say.With($"{LessonWords.Title(plan)}. Date, place, who taught: ______________________________"), ParagraphSort.Small);
        yield return new PaperBlock.Table([Say.It("Name"), Say.It("Number"), Say.It("Role"), Say.It("Signature")], [.. Enumerable.Repeat(ImmutableArray<PaperText>.Empty, Math.Min(plan.Request.People + 2, MostSignatures))])
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
