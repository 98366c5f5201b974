using System.Collections.Immutable;
using System.CommandLine;
using Sightglass.Basics.Diagnostics;
using Sightglass.Basics.Quantities;
using Sightglass.Basics.Time;
using Sightglass.Book.Model;
using Sightglass.Cli.Books;
using Sightglass.Cli.Output;
using Sightglass.Cli.Reports;
using Sightglass.Cli.Runs;
using Sightglass.Cli.Tries;
using Sightglass.Drawing.Svg;
using Sightglass.Plant.Plans;
using Sightglass.Trials.Tries;
using Sightglass.World.Records;
using Sightglass.World.Runs;
using Sightglass.World.Situations;

namespace Sightglass.Cli.Verbs;

/// <summary><c>run</c>: one case of a situation, with a card or without.</summary>
internal sealed class RunVerb : BookVerb
{
    private readonly Argument<string?> _situation = new("SITUATION")
    {
        Description = "Name of a situation in the book. Default: its only one.",
        Arity = ArgumentArity.ZeroOrOne,
    };

    private readonly Option<string?> _card = new("--card", "-c") { Description = "A card to work by: a file, or a title in the book.", HelpName = "CARD" };
    private readonly Option<string?> _for = new("--for") { Description = "How long to run. Default: until the card has ended; 30 min without one.", HelpName = "TIME" };
    private readonly Option<string> _every = new("--every") { Description = "Time between samples.", HelpName = "TIME", DefaultValueFactory = _ => "1 s" };
    private readonly Option<ulong> _seed = new("--seed") { Description = "Settles all draws, with the case.", DefaultValueFactory = _ => 1 };
    private readonly Option<ulong> _case = new("--case") { Description = "Which case of the situation.", DefaultValueFactory = _ => 0 };
    private readonly Option<string?> _csv = OutputFile.Option("--csv", "Write the samples to this file; - for the terminal.", orTerminal: true);

    private readonly Option<string?> _plot = OutputFile.Option("--plot", "Draw what is recorded over time into this SVG file: a chart for each unit, truth dashed.");
    private readonly Option<Theme> _theme = new("--theme") { Description = "Light in which the plot is shown.", DefaultValueFactory = _ => Theme.Reader };

    private readonly Option<string?> _record = new("--record")
    {
        Description = "Do again what was done in a session of the pages: its record brings situation, case and actions. Says whether it ends in the same hash.",
        HelpName = "FILE",
    };

    private readonly Option<string?> _save = OutputFile.Option("--save", "Keep the run in this file as it goes, so that --from can take it up wherever it was broken off.");

    private readonly Option<string> _saveEvery = new("--save-every") { Description = "Time of the run between two savings.", HelpName = "TIME", DefaultValueFactory = _ => "1 min" };
    private readonly Option<string?> _from = new("--from") { Description = "Take up a run kept by --save. It ends as if it had never been broken off, in the same hash.", HelpName = "FILE" };

    private readonly Option<string[]> _show = new("--show", "-s")
    {
        Description = "What to record: an indication, a control, a fact, a sign, a true quantity such as \"level of tank\", any formula of these, or all. Default: every indication.",
        HelpName = "NAME",
        AllowMultipleArgumentsPerToken = true,
        DefaultValueFactory = _ => [],
    };

    public RunVerb()
        : base("run", "Run one case of a situation, with a card or without, and tell its story.")
    {
        Add(_situation);
        Add(BookOption);
        Add(RoadNumber);
        Add(_card);
        Add(_for);
        Add(_every);
        Add(_show);
        Add(_seed);
        Add(_case);
        Add(_csv);
        Add(_record);
        Add(_plot);
        Add(_theme);
        Add(_save);
        Add(_saveEvery);
        Add(_from);
    }

    public override IReadOnlyList<(string Call, string Says)> Examples =>
    [
        ("run \"leaking compartment\" --card empty-a-leaking-compartment --case 7", "a card in one of its cases, told step by step"),
        ("run \"idle, nothing wrong\" --for 10h --every 60s --show \"volume of aft compartment\" --csv idle.csv", "ten hours of an idle machine, for a spreadsheet"),
        ("run --record records/current.jsonl --every 10s --csv session.csv", "a session of the pages done again, without pages"),
        ("run \"leaking compartment\" --for 30min --every 10s --show \"cab fuel gauge\" \"volume of aft compartment\" --plot run.svg", "what a gauge shows and what is there, as a picture"),
        ("run \"leaking compartment\" --card empty-a-leaking-compartment --save run.json", "a run that another process can take up: run --from run.json"),
        ("run --book books/smallest --for 30min --every 60s --show all", "everything in a book with one tank and one hole"),
    ];

    protected override Task<int> RunAsync(ParseResult line, CancellationToken stop)
    {
        string? named = line.GetValue(BookOption);
        string? card = line.GetValue(_card);
        if (BookFolderFinder.Find(named, card) is not { } folder)
        {
            return NoBook(line, named);
        }

        BookInspection inspection = BookInspection.Read(folder, all: false);
        if (inspection.Book is not { } book)
        {
            return Refuse(line, folder, inspection.Found);
        }

        if (line.GetValue(_record) is { } path)
        {
            return (WithRecord(line) ?? new Option[] { _save, _from }.FirstOrDefault(o => line.GetResult(o) is { Implicit: false })?.Name) is { } twice ? WrongUse(line, $"A record brings its own: leave out {twice}.")
                : RecordSource.Read(path, inspection, line.InvocationConfiguration.Error) is { } record ? Repeat(line, inspection, record)
                : Task.FromResult(ExitCode.WrongUse);
        }

        if (line.GetValue(_from) is { } kept)
        {
            return WithRecord(line) is { } own ? WrongUse(line, $"A run that is taken up brings its own: leave out {own}.")
                : SavedRun.Read(kept, inspection, line.InvocationConfiguration.Error) is { } saved ? TakeUp(line, inspection, saved)
                : Task.FromResult(ExitCode.WrongUse);
        }

        return FindSituation(line, book) is { } situation && HasRoadNumber(line, inspection, NumberFor(line, book, situation))
            ? Run(line, inspection, situation)
            : Task.FromResult(ExitCode.WrongUse);
    }

    // What was typed that the record says itself.
    private string? WithRecord(ParseResult line) =>
        line.GetValue(_situation) is not null ? "SITUATION"
        : new Option[] { _card, _seed, _case, RoadNumber }.FirstOrDefault(o => line.GetResult(o) is { Implicit: false })?.Name;

    private Task<int> Repeat(ParseResult line, BookInspection inspection, SessionRecord record)
    {
        SessionStart start = record.Header.Start;
        Plan plan = inspection.Fleet.For(start.RoadNumber, start.Situation is { } of ? inspection.Book!.Situations[of].Train : null)!;
        DiagnosticList found = [];
        if (Sampling(line, plan, found) is not { } sampling)
        {
            return Task.FromResult(ExitCode.WrongUse);
        }

        SituationStart? from = start.Situation is { } name ? SituationStart.Bind(plan, plan.Book.Situations[name], found) : null;
        if (found.HasErrors)
        {
            return Refuse(line, inspection.Folder, found);
        }

        SimTime until = sampling.For is { } length && length.Ticks < record.End ? length : new(record.End);
        return Told(line, Runner.Run(new(plan, from, [], null, start.Seed, start.Case, until, sampling.Every, record), sampling.Columns));
    }

    private Task<int> TakeUp(ParseResult line, BookInspection inspection, SavedRun saved)
    {
        Plan plan = inspection.Fleet.For(saved.RoadNumber, inspection.Book!.Situations[saved.Situation].Train)!;
        DiagnosticList found = [];
        if (Sampling(line, plan, found) is not { } sampling || CardFor(line, plan, saved.Card, found) is not { } card)
        {
            return Task.FromResult(ExitCode.WrongUse);
        }

        SituationStart? start = SituationStart.Bind(plan, plan.Book.Situations[saved.Situation], found);
        return found.HasErrors
            ? Refuse(line, inspection.Folder, found)
            : Told(line, Runner.Run(
                new(plan, start, card.Choices, card.Title, saved.Seed, saved.Case, saved.Length ?? sampling.For, sampling.Every, null, saved.Snapshot(), SavingOf(line, inspection, saved.Card)), sampling.Columns));
    }

    private Saving? SavingOf(ParseResult line, BookInspection inspection, string? card) =>
        line.GetValue(_save) is { } file ? new(file, Time(line.GetValue(_saveEvery), []) ?? SimTime.FromSeconds(60), inspection.Folder, card) : null;

    /// <summary>The card's title and programs; none where none is named; null where it was not found.</summary>
    internal static (string? Title, ImmutableArray<ProgramChoice> Choices)? CardFor(ParseResult line, Plan plan, string? card, DiagnosticList found)
    {
        if (card is null)
        {
            return (null, []);
        }

        return CardSource.Find(card, plan.Book, line.InvocationConfiguration.Error) is not { } text ? null
            : CardSource.Compile(text, plan, found) is { } compiled ? (compiled.Card.Title, compiled.Choices) : (null, []);
    }

    /// <summary>The number asked for, or the one that the case draws, as it does in a trial.</summary>
    private string? NumberFor(ParseResult line, ClassBook book, Situation situation) =>
        line.GetValue(RoadNumber) ?? RoadNumberDraw.Of(book, situation, line.GetValue(_seed), line.GetValue(_case));

    private Task<int> Run(ParseResult line, BookInspection inspection, Situation situation)
    {
        Plan plan = inspection.Fleet.For(NumberFor(line, inspection.Book!, situation), situation.Train)!;
        DiagnosticList found = [];
        if (Sampling(line, plan, found) is not { } sampling)
        {
            return Task.FromResult(ExitCode.WrongUse);
        }

        SituationStart? start = SituationStart.Bind(plan, situation, found);
        if (CardFor(line, plan, line.GetValue(_card), found) is not var (title, choices))
        {
            return Task.FromResult(ExitCode.WrongUse);
        }

        AskedPeople.Check(choices, situation, found);
        if (start is null || found.HasErrors)
        {
            return Refuse(line, inspection.Folder, found);
        }

        if (CardSituations.Missing(choices, situation) is { } role)
        {
            return WrongUse(line, $"The card `{title}` is for {role}, and in `{situation.Name}` there is none; choose another situation or add one under `people:`.");
        }

        SimTime? until = sampling.For ?? (choices.IsEmpty ? SimTime.FromSeconds(1800) : null);
        return Told(line, Runner.Run(new(plan, start, choices, title, line.GetValue(_seed), line.GetValue(_case), until, sampling.Every, Saving: SavingOf(line, inspection, line.GetValue(_card))), sampling.Columns));
    }

    /// <summary>What is to be shown, how often and for how long; null after saying what is wrong.</summary>
    private (SimTime? For, SimTime Every, List<Column> Columns)? Sampling(ParseResult line, Plan plan, DiagnosticList found)
    {
        SimTime? length = Time(line.GetValue(_for), found);
        SimTime? every = Time(line.GetValue(_every), found);
        _ = Time(line.GetValue(_saveEvery), found);
        ColumnFinder finder = new(plan);
        string[] show = line.GetValue(_show)!;
        List<Column> columns = show.Length == 0 ? finder.Usual() : finder.Find(show, found);
        if (found.HasErrors || every is null)
        {
            Findings.Print(line.InvocationConfiguration.Error, "", found);
            return null;
        }

        return (length, every.Value, columns);
    }

    private Task<int> Told(ParseResult line, RunResult result)
    {
        Write(line, result);
        return Task.FromResult(result.IsGood ? ExitCode.Good : ExitCode.No);
    }

    private void Write(ParseResult line, RunResult result)
    {
        TextWriter output = line.InvocationConfiguration.Output;
        if (line.GetValue(_plot) is { } plot)
        {
            OutputFile.Write(plot, RunPlot.Svg(result, line.GetValue(_theme)));
        }

        string? csv = line.GetValue(_csv);
        if (csv == "-")
        {
            output.Write(CsvText.Of(result.Recorder));
            return;
        }

        if (csv is not null)
        {
            OutputFile.Write(csv, CsvText.Of(result.Recorder));
        }

        if (line.GetValue(Json))
        {
            Answer.Write(output, RunAnswer.Of(result));
        }
        else
        {
            RunText.Print(output, result);
        }
    }

    private Situation? FindSituation(ParseResult line, ClassBook book)
    {
        TextWriter error = line.InvocationConfiguration.Error;
        if (line.GetValue(_situation) is { } name)
        {
            if (!book.Situations.TryGetValue(name, out Situation? found))
            {
                string hint = Nearest.DidYouMean(name, book.Situations.Keys) ?? $"it has: {string.Join("; ", book.Situations.Keys)}";
                error.WriteLine($"The book has no situation `{name}`; {hint}");
            }

            return found;
        }

        if (book.Situations.Count != 1)
        {
            error.WriteLine($"Say which situation: {string.Join("; ", book.Situations.Keys)}");
        }

        return book.Situations.Count == 1 ? book.Situations.Values.First() : null;
    }

    internal static SimTime? Time(string? text, DiagnosticList found) =>
        text is not null && QuantityText.TryParse(text, new SourceText("time", text).Between(0, text.Length), Dimension.Second, found, out Quantity time)
            ? SimTime.FromSeconds(Math.Max(time.Si, 1e-3))
            : null;

    private static Task<int> Refuse(ParseResult line, string folder, DiagnosticList found)
    {
        Findings.Print(line.InvocationConfiguration.Error, folder == "." ? "" : folder, found);
        return Task.FromResult(ExitCode.No);
    }
}
