using System.Collections.Immutable;
using System.Globalization;
using Sightglass.Basics.Language;
using Sightglass.Basics.Time;
using Sightglass.Book.Model;
using Sightglass.Drawing.Svg;
using Sightglass.Drawing.Timelines;
using Sightglass.Paper.Document;
using Sightglass.Training.Debrief;
using Sightglass.Training.Evaluation;

namespace Sightglass.Paper.Papers;

/// <summary>The evaluation sheet of a drill, on two pages: what it came to with its evidence; then the timeline, what was observed, advice apart from what counts, and who signs.</summary>
public static class DebriefPaper
{
    /// <summary>Pixels of the timeline: its letters are large enough on a page then.</summary>
    private const double Width = 760;

    /// <param name="film">The run.</param>
    /// <param name="facts">What stands beside it.</param>
    public static PaperDocument Of(DebriefFilm film, DebriefFacts facts)
    {
        ArgumentNullException.ThrowIfNull(film);
        ArgumentNullException.ThrowIfNull(facts);
        ClassBook book = film.Drill.Plan.Book;
        string title = Say.With($"Evaluation sheet: {PaperWords.Named(film.Drill.Drill.Name)}");
        return new PaperDocument(title, PaperLook.Dense, [.. First(film, facts, title), new PaperBlock.PageBreak(), .. Second(film, facts)])
        { Style = "debrief", Machine = PaperWords.Machine(book), Notice = PaperWords.Notice(book) };
    }

    private static IEnumerable<PaperBlock> First(DebriefFilm film, DebriefFacts facts, string title)
    {
        Drill drill = film.Drill.Drill;
        EvaluationSheet sheet = film.Result.Sheet;
        yield return new PaperBlock.Heading(1, title);
        yield return new PaperBlock.Paragraph(PaperText.Strong(DebriefWords.Headline(film.Turning)), ParagraphSort.Lead);
        yield return new PaperBlock.Paragraph(DebriefWords.Why(film.Turning));
        string who = facts.Trainee.Length > 0 ? facts.Trainee : Say.It("Name not known");
        string sort = drill.IsQualifying ? Say.It("qualifying") : Say.It("practice: it is no assessment");
        yield return new PaperBlock.Paragraph(
            PaperText.Strong(who).And(Say.With($", {drill.Role}. Drill {facts.Drill} on {PaperWords.Day(facts.Day)}, {sort}; seed {facts.Seed}, case {facts.Case}. {Points(sheet)}")), ParagraphSort.Small);
        yield return new PaperBlock.Paragraph(Say.Book(drill.Aim), ParagraphSort.Small);
        yield return new PaperBlock.Heading(2, Say.It("Line by line, each with what shows it"));
        yield return new PaperBlock.Table(
            [Say.It("At"), Say.It("What"), Say.It("Stands"), Say.It("What shows it"), Say.It("Points")],
            [.. sheet.Lines.Select(Row)])
        { Widths = [0.7, 3, 1.4, 4.2, 0.8] };
        string[] because = [.. sheet.Failures.Select(l => l.Because).Where(b => b.Length > 0).Distinct()];
        if (because.Length > 0)
        {
            yield return new PaperBlock.Heading(2, Say.It("Why it matters"));
            yield return new PaperBlock.Bullets([.. because.Select(b => (PaperText)Say.Book(b))]);
        }

        if (!drill.Asks.IsEmpty)
        {
            yield return new PaperBlock.Heading(2, Say.It("To ask now"));
            yield return new PaperBlock.Bullets([.. drill.Asks.Select(q => (PaperText)Say.Book(q.Asked))]);
        }
    }

    private static ImmutableArray<PaperText> Row(EvaluationLine line)
    {
        string stands = DebriefWords.Stands(line);
        return
        [
            line.At is { } at ? new ClockWords(at).ToString() : "",
            line.Said,
            line.IsMet ? stands : PaperText.Strong(stands),
            line.Shown,
            line.Worth == 0 ? "" : line.Worth < 0 ? DebriefWords.Points(line.Worth) : Say.With($"{DebriefWords.Points(line.IsMet ? line.Worth : 0)} of {DebriefWords.Points(line.Worth)}"),
        ];
    }

    private static IEnumerable<PaperBlock> Second(DebriefFilm film, DebriefFacts facts)
    {
        Timeline lanes = DebriefLanes.Of(film, Width);
        yield return new PaperBlock.Heading(2, Say.It("What happened when"));
        yield return new PaperBlock.Picture(TimelineDrawing.Render(lanes, SvgOptions.Inline with { IdPrefix = "debrief-" }), Alt(film)) { MostHeight = 0.47, Caption = new PaperText([]).And(Say.It("Dashed: the truth, which nobody could read. Solid in the same lane: what could be read where the trainee stood."), RunStyle.Aside) };
        yield return new PaperBlock.Columns([.. Observed(facts)], [.. Coached(facts)]);
        yield return new PaperBlock.Heading(2, Say.It("Signed"));
        yield return new PaperBlock.Table([Say.It("Assessor"), Say.It("Second assessor"), Say.It("Trainee")], [[]]);
        yield return new PaperBlock.Paragraph(Say.It("Name, signature and day of each."), ParagraphSort.Small);
        string rules = Say.With($"Made by version {film.Result.Sheet.Rules.ToString(CultureInfo.InvariantCulture)} of the rules from the record {facts.Record} with the hash {film.Result.Hash.ToString("x16", CultureInfo.InvariantCulture)}. The same record and the same rules give the same sheet.");
        yield return new PaperBlock.Paragraph(rules, ParagraphSort.Small);
        yield return new PaperBlock.Notice(SignalWord.Notice, DebriefWords.StandsIn);
    }

    private static IEnumerable<PaperBlock> Observed(DebriefFacts facts)
    {
        yield return new PaperBlock.Heading(2, Say.It("Seen by the assessor"));
        if (facts.Observed.IsEmpty)
        {
            yield return new PaperBlock.Paragraph(Say.It("Nothing was marked."), ParagraphSort.Small);
        }
        else
        {
            yield return new PaperBlock.Table([Say.It("What"), Say.It("Seen")], [.. facts.Observed.Select(o => ImmutableArray.Create<PaperText>(Say.Begin(Say.Book(o.Item)), PaperText.Strong(o.Saw)))]) { Widths = [3, 1], RowHeads = true };
        }

        if (facts.Agreement.Length > 0)
        {
            yield return new PaperBlock.Paragraph(facts.Agreement, ParagraphSort.Small);
        }
    }

    private static IEnumerable<PaperBlock> Coached(DebriefFacts facts)
    {
        yield return new PaperBlock.Heading(2, Say.It("To coach, apart from what counts"));
        if (facts.Coached.IsEmpty)
        {
            yield return new PaperBlock.Paragraph(Say.It("Nothing was written down."), ParagraphSort.Small);
        }
        else
        {
            yield return new PaperBlock.Bullets([.. facts.Coached.Select(c => (PaperText)c)]);
        }
    }

    private static string Points(EvaluationSheet sheet) =>
        Say.With($"{DebriefWords.Points(sheet.Points)} of {DebriefWords.Points(sheet.MostPoints)} points; {DebriefWords.Points(sheet.NeededPoints)} are needed beside every critical line.");

    /// <summary>What the picture shows, for people who cannot see it: everything in words.</summary>
    private static string Alt(DebriefFilm film) => string.Join(' ', film.Result.Outcome.Notes.Select(n => (n.At, Words: DebriefWords.Sentence(film.Drill, n))).Where(n => n.Words is not null).Select(n => $"{new ClockWords(n.At)}: {n.Words}"));
}
