using System.CommandLine;
using System.Globalization;
using Sightglass.Basics.Diagnostics;
using Sightglass.Book.Model;
using Sightglass.Cli.Books;
using Sightglass.Cli.Data;
using Sightglass.Cli.Output;
using Sightglass.Cli.Routes;
using Sightglass.Cli.Tries;
using Sightglass.Paper.Document;
using Sightglass.Paper.Html;
using Sightglass.Paper.Papers;
using Sightglass.Paper.Pdf;
using Sightglass.Paper.Photos;
using Sightglass.Training.Differences;
using Sightglass.Training.Lessons;
using Sightglass.Training.Routes;
using Sightglass.Trials.Sweep;
using Sightglass.Trials.Tries;

namespace Sightglass.Cli.Verbs;

/// <summary><c>paper</c>: what is printed, as tagged PDF or as a page that stands alone.</summary>
internal sealed class PaperVerb : BookVerb
{
    private static readonly string[] s_sorts = ["card", "lesson", "system", "walk", "differences"];

    private readonly Argument<string> _sort = new("PAPER") { Description = "What is printed: card, lesson, system, walk, differences." };
    private readonly Argument<string?> _name = new("NAME") { Description = "Which: a card's file or title, what a lesson shows, a system, for differences an old habit.", Arity = ArgumentArity.ZeroOrOne };
    private readonly Option<string?> _pdf = OutputFile.Option("--pdf", "Write a tagged PDF into this file.");
    private readonly Option<string?> _html = OutputFile.Option("--html", "Write a page that stands alone into this file.");
    private readonly Option<string?> _size = new("--size") { Description = $"The sheet: {string.Join(", ", PaperSheet.All.Select(s => s.Name))}. Default: a6 for a card, a2 for the walk, else letter.", HelpName = "SHEET" };
    private readonly Option<bool> _large = new("--large") { Description = "Large print: 18 pt and more, on letter or a4." };
    private readonly Option<PaperUnits> _units = new("--units") { Description = "Say quantities also in these units, in brackets. A card's text stays as it was tried.", DefaultValueFactory = _ => PaperUnits.Book };
    private readonly Option<string?> _address = new("--address") { Description = "Address at which the pages are served: the paper gets a code that leads a phone there.", HelpName = "URL" };
    private readonly Option<int> _cases = new("--cases", "-n") { Description = "A card is tried in so many cases of each of its situations, for its stamp.", DefaultValueFactory = _ => 512 };
    private readonly Option<string?> _approved = new("--approved-by") { Description = "Who stands for the card. Without, and for a card that fails, it is a draft.", HelpName = "NAME" };
    private readonly Option<int> _people = new("--people") { Description = "How many are taught in a lesson.", HelpName = "N", DefaultValueFactory = _ => 10 };
    private readonly Option<int> _stations = new("--stations") { Description = "Stations of a lesson.", HelpName = "N", DefaultValueFactory = _ => 1 };
    private readonly Option<string?> _fromNumber = new("--from-number") { Description = "For differences: the road number that the people know. Default: the class as described.", HelpName = "NUMBER" };

    private readonly Option<string?> _from = new("--from") { Description = "For differences: folder of the class book that the people know. Default: the same book.", HelpName = "FOLDER" };
    private readonly Option<string?> _data = DataOption.Create();

    public PaperVerb()
        : base("paper", "What is printed, as tagged PDF or a page that stands alone: a card for the pocket, a lesson, a system on a sheet, the walk for a wall, what differs.")
    {
        Add(_sort);
        Add(_name);
        Add(BookOption);
        Add(RoadNumber);
        foreach (Option option in new Option[] { _pdf, _html, _size, _large, _units, _address, _cases, _approved, _people, _stations, _from, _fromNumber, _data })
        {
            Add(option);
        }
    }

    public override IReadOnlyList<(string Call, string Says)> Examples =>
    [
        ("paper card drain-water --cases 32 --pdf card.pdf", "a card for the pocket, tried and stamped"),
        ("paper card drain-water --cases 32 --size folded-letter --pdf folded.pdf", "the same on one sheet to fold like a fan"),
        ("paper system fuel --units us --pdf fuel.pdf", "the fuel system on a sheet, litres also in gallons"),
        ("paper walk --size a3 --pdf walk.pdf", "the walk round the machine for a wall"),
        ("paper lesson \"fuel for a crew\" --large --pdf lesson.pdf", "a lesson in large print"),
        ("paper differences --road-number 4104 --pdf differs.pdf", "what differs on one machine of the class"),
    ];

    /// <summary>The day on the wall: papers carry it.</summary>
    internal static DateOnly Today => DateOnly.FromDateTime(TimeProvider.System.GetLocalNow().DateTime);

    protected override Task<int> RunAsync(ParseResult line, CancellationToken stop) => Task.Run(() => Write(line, stop), CancellationToken.None);

    private int Write(ParseResult line, CancellationToken stop)
    {
        string sort = line.GetValue(_sort)!;
        if (!s_sorts.Contains(sort, StringComparer.Ordinal))
        {
            return Wrong(line, $"There is no paper `{sort}`; {Nearest.DidYouMean(sort, s_sorts) ?? $"there are {string.Join(", ", s_sorts)}"}");
        }

        if (line.GetValue(_pdf) is null && line.GetValue(_html) is null)
        {
            return Wrong(line, "Say where to: --pdf FILE, --html FILE, or both");
        }

        if (SheetOf(line, sort) is not { } sheet)
        {
            return ExitCode.WrongUse;
        }

        if (line.GetValue(_people) < 1 || line.GetValue(_stations) < 1 || line.GetValue(_cases) < 1)
        {
            return Wrong(line, "--people, --stations and --cases are 1 or more");
        }

        if (line.GetValue(_address) is { } address && (!Uri.TryCreate(address, UriKind.Absolute, out Uri? uri) || uri.Scheme is not ("http" or "https")))
        {
            return Wrong(line, $"`{address}` is no address: write one such as `http://192.168.1.20:5000`");
        }

        int exit;
        ClassBook? book = null;
        PaperDocument? paper = sort == "card" ? Card(line, stop, out exit) : (book = Open(line, out exit)) is not null ? Of(line, sort, book, sheet, out exit) : null;
        return paper is null ? exit : Save(line, Dated(paper), sheet, other => PdfPaper.Write(Dated(book is null ? paper : Of(line, sort, book, other, out _)!), other).LeastLetters);

        PaperDocument Dated(PaperDocument made) => (made with { Printed = Today }).In(line.GetValue(_units));
    }

    private PaperSheet? SheetOf(ParseResult line, string sort)
    {
        TextWriter error = line.InvocationConfiguration.Error;
        PaperLook look = sort switch { "card" => PaperLook.Pocket, "walk" => PaperLook.Poster, _ => PaperLook.Sheet };
        bool large = line.GetValue(_large);
        string? named = line.GetValue(_size);
        PaperSheet? sheet = named is null ? (large ? PaperSheet.Letter : PaperSheet.Default(look)) : PaperSheet.Find(named);
        IEnumerable<PaperSheet> fit = large ? [PaperSheet.Letter, PaperSheet.A4] : PaperSheet.All.Where(s => s.Fits(look));
        if (sheet is null || !fit.Contains(sheet))
        {
            error.WriteLine($"{(named is null ? "Large print" : $"`{named}`")} is no sheet for this paper; it is printed on {string.Join(", ", fit.Select(s => s.Name))}{(large ? " in large print" : "")}");
            return null;
        }

        if (large && look == PaperLook.Poster)
        {
            error.WriteLine("The walk has no large print: its names are as large as the sheet lets them. --size a2 has the largest");
            return null;
        }

        return sheet with { Large = large };
    }

    private PaperDocument? Card(ParseResult line, CancellationToken stop, out int exit)
    {
        exit = ExitCode.WrongUse;
        TextWriter error = line.InvocationConfiguration.Error;
        string? named = line.GetValue(BookOption);
        if (line.GetValue(_name) is not { } card)
        {
            error.WriteLine("Which card? Write its title or file: paper card drain-water");
            return null;
        }

        if (BookFolderFinder.Find(named, card) is not { } folder)
        {
            NoBook(line, named);
            return null;
        }

        BookInspection inspection = BookInspection.Read(folder, all: false);
        if (inspection.Book is not null && !HasRoadNumber(line, inspection, line.GetValue(RoadNumber)))
        {
            return null;
        }

        SweepOptions options = new() { Cases = line.GetValue(_cases), Seed = 1, Threads = 0 };
        if (TryRequests.Prepare(inspection, card, [], line.GetValue(RoadNumber), options, leftOut: false, error, out exit) is not { } requests)
        {
            return null;
        }

        TryResult[] results = [.. requests.Select(r => TryProgress.Watch(error, r, q => Trier.Run(q, stop)))];
        string? approved = line.GetValue(_approved);
        if (approved is not null && TriedCard.Hindrance(results) is { } hindrance)
        {
            error.WriteLine($"Not approved: {hindrance}. The card says draft.");
        }

        exit = ExitCode.Good;
        return TriedCard.Of(results, folder, approved, Today, PageAt(line, "papers?card=" + Uri.EscapeDataString(Path.GetFileNameWithoutExtension(requests[0].Text.Path))));
    }

    private PaperDocument? Of(ParseResult line, string sort, ClassBook book, PaperSheet sheet, out int exit)
    {
        exit = ExitCode.WrongUse;
        TextWriter error = line.InvocationConfiguration.Error;
        switch (sort)
        {
            case "walk":
                return WalkPaper.Of(book, PageAt(line, "walk"), WalkPaper.LettersOn(sheet.Name), AlbumOf(line, book, error));
            case "differences":
                return Differences(line, book, error, out exit);
            case "system":
                string system = line.GetValue(_name) ?? "";
                if (!book.Systems.ContainsKey(system))
                {
                    error.WriteLine(system.Length == 0 ? $"Which system? The book has {string.Join(", ", book.Systems.Keys)}" : RouteOptions.Unknown("system", system, book.Systems.Keys));
                    return null;
                }

                return SystemPaper.Of(book, system, PageAt(line, "machine"), sheet, AlbumOf(line, book, error), line.GetValue(_units));
            default:
                return Lesson(line, book, sheet, error, out exit);
        }
    }

    private PaperDocument? Differences(ParseResult line, ClassBook book, TextWriter error, out int exit)
    {
        exit = ExitCode.WrongUse;
        string? habit = line.GetValue(_name);
        if (habit is not null && !book.Habits.ContainsKey(habit))
        {
            error.WriteLine(RouteOptions.Unknown("habit", habit, book.Habits.Keys));
            return null;
        }

        if (KnownMachine.Read(line, line.GetValue(_from) ?? line.GetValue(BookOption), line.GetValue(_fromNumber), out exit) is not { } known)
        {
            return null;
        }

        MachineStatus status = MachineStatus.Of(book, Today, KeptDefects.Of(line.GetValue(_data), FolderOf(line), book, error));
        return habit is null ? DifferencePaper.Of(known, book, status) : DifferencePaper.Of(book, book.Habits[habit], status);
    }

    private PaperDocument? Lesson(ParseResult line, ClassBook book, PaperSheet sheet, TextWriter error, out int exit)
    {
        exit = ExitCode.WrongUse;
        string purpose = line.GetValue(_name) ?? RouteRequest.Whole;
        if (PurposeFinder.Find(purpose, book, error) is not var (asked, spoken))
        {
            return null;
        }

        LessonRequest request = new(asked, line.GetValue(_people), Depth.Operate)
        {
            Stations = line.GetValue(_stations),
            Audience = asked.Role,
            Kit = book.Walks.TryGetValue(purpose, out PlannedWalk? walk) ? walk.Kit : [],
        };
        if (LessonPlanner.Plan(spoken, request) is { } plan)
        {
            return LessonPaper.Of(plan, PageAt(line, "lesson?shows=" + Uri.EscapeDataString(purpose)), sheet, AlbumOf(line, spoken, error));
        }

        exit = RouteVerb.NoWalk(line).Result;
        return null;
    }

    private PaperAlbum AlbumOf(ParseResult line, ClassBook book, TextWriter error) => KeptPhotos.Album(line.GetValue(_data), FolderOf(line), book, error);

    private string? PageAt(ParseResult line, string page) => line.GetValue(_address) is { } address ? $"{address.TrimEnd('/')}/{page}" : null;

    private int Save(ParseResult line, PaperDocument paper, PaperSheet sheet, Func<PaperSheet, double> lettersOn)
    {
        PdfFile? pdf = null;
        if (line.GetValue(_pdf) is { } pdfFile)
        {
            pdf = PdfPaper.Write(paper, sheet);
            OutputFile.Write(pdfFile, pdf.Bytes);
        }

        if (line.GetValue(_html) is { } htmlFile)
        {
            OutputFile.Write(htmlFile, HtmlPage.Write(paper, sheet));
        }

        if (pdf is not null && SheetAdvice.Of(paper.Look, sheet, pdf.LeastLetters, lettersOn) is { } advice)
        {
            line.InvocationConfiguration.Error.WriteLine(advice);
        }

        TextWriter output = line.InvocationConfiguration.Output;
        if (line.GetValue(Json))
        {
            double? letters = pdf is { } file && double.IsFinite(file.LeastLetters) ? Math.Round(file.LeastLetters, 1) : null;
            Answer.Write(output, new PaperAnswer(paper.Title, paper.Language, sheet.Name, line.GetValue(_units).ToString().ToLowerInvariant(), line.GetValue(_pdf), line.GetValue(_html), pdf?.Pages, letters));
        }
        else
        {
            string[] written = [.. new[] { line.GetValue(_pdf), line.GetValue(_html) }.OfType<string>()];
            output.WriteLine($"Written: {string.Join(", ", written)}. {paper.Title}{(pdf is null ? "" : pdf.Pages == 1 ? ", one page" : string.Create(CultureInfo.InvariantCulture, $", {pdf.Pages} pages"))}, {sheet.Name}.");
        }

        return ExitCode.Good;
    }

    private static int Wrong(ParseResult line, string message) => WrongUse(line, message).Result;
}
