using System.CommandLine;
using Sightglass.Basics.Diagnostics;
using Sightglass.Basics.Time;
using Sightglass.Book.Model;
using Sightglass.Book.Rules;
using Sightglass.Cli.Books;
using Sightglass.Cli.Output;
using Sightglass.Cli.Rules;
using Sightglass.Cli.Runs;
using Sightglass.Plant.Plans;
using Sightglass.Plant.Rules;
using Sightglass.World.Situations;

namespace Sightglass.Cli.Verbs;

/// <summary><c>rules</c>: published limits, held against a book or a run.</summary>
internal sealed class RulesVerb : BookVerb
{
    private readonly Option<string?> _set = new("--set") { Description = "A set of rules: a folder, or a name under rules/. Default: all that are there.", HelpName = "FOLDER" };
    private readonly Option<string?> _show = new("--show", "-s") { Description = "Only this paragraph, and all below it, in full.", HelpName = "PARAGRAPH" };
    private readonly Option<string?> _run = new("--run") { Description = "Run this situation and measure in it what rules measure by a method.", HelpName = "SITUATION" };
    private readonly Option<string?> _card = new("--card", "-c") { Description = "With --run: a card to work by.", HelpName = "CARD" };
    private readonly Option<string?> _for = new("--for") { Description = "With --run: how long. Default: until the card has ended; 30 min without one.", HelpName = "TIME" };
    private readonly Option<ulong> _seed = new("--seed") { Description = "With --run: settles all draws, with the case.", DefaultValueFactory = _ => 1 };
    private readonly Option<ulong> _case = new("--case") { Description = "With --run: which case of the situation.", DefaultValueFactory = _ => 0 };

    public RulesVerb()
        : base("rules", "Hold a class book, or a run of it, against published limits: kept, not kept, or cannot be told, each with its number. Local rules decide.")
    {
        Add(Folder);
        Add(RoadNumber);
        Add(_set);
        Add(_show);
        Add(_run);
        Add(_card);
        Add(_for);
        Add(_seed);
        Add(_case);
    }

    public override IReadOnlyList<(string Call, string Says)> Examples =>
    [
        ("rules", "every row for the demo; exit code 1 where one is not kept"),
        ("rules --show \"229.59(a)\"", "one row with its condition and how it is measured"),
        ("rules --set us-cfr49 --json", "one country's set, for a script"),
    ];

    protected override Task<int> RunAsync(ParseResult line, CancellationToken stop)
    {
        string? named = line.GetValue(Folder);
        if (BookFolderFinder.Find(named) is not { } folder)
        {
            return NoBook(line, named);
        }

        if (RuleFolderFinder.Find(line.GetValue(_set)) is not { Count: > 0 } sets)
        {
            return NoRules(line, line.GetValue(_set));
        }

        BookInspection inspection = BookInspection.Read(folder, all: false);
        if (inspection.Book is not { } book)
        {
            return Refuse(line, folder, inspection.Found);
        }

        if (!HasSituation(line, book, line.GetValue(_run)))
        {
            return Task.FromResult(ExitCode.WrongUse);
        }

        string? number = NumberFor(line, book);
        if (!HasRoadNumber(line, inspection, number))
        {
            return Task.FromResult(ExitCode.WrongUse);
        }

        List<RuleSet> rules = [];
        foreach (string set in sets)
        {
            DiagnosticList found = [];
            if (RuleReader.Read(set, found) is not { } read)
            {
                return Refuse(line, set, found);
            }

            Findings.Print(line.InvocationConfiguration.Error, set, found);
            rules.Add(read);
        }

        return Hold(line, inspection, inspection.Fleet.For(number, line.GetValue(_run) is { } run ? inspection.Book!.Situations.GetValueOrDefault(run)?.Train : null)!, rules);
    }

    private Task<int> Hold(ParseResult line, BookInspection inspection, Plan plan, IReadOnlyList<RuleSet> rules)
    {
        DiagnosticList found = [];
        RuleBinding[] bindings = [.. rules.Select(r => RuleBinding.Of(r, plan, found))];
        if (found.HasErrors)
        {
            return Refuse(line, inspection.Folder, found);
        }

        // With several sets a measure is for any one of them.
        if (rules.Count == 1)
        {
            Findings.Print(line.InvocationConfiguration.Error, inspection.Folder, found);
        }

        RunResult? run = null;
        RuleTrace[] traces = [];
        if (line.GetValue(_run) is { } situation)
        {
            if (Request(line, plan, situation, found) is not { } request)
            {
                return found.HasErrors ? Refuse(line, inspection.Folder, found) : Task.FromResult(ExitCode.WrongUse);
            }

            (run, traces) = MeasuredRun.Of(request, bindings);
        }

        RuleSetResult[] results = [.. rules.Select((r, i) => new RuleSetResult(r, run is null ? RuleCheck.Of(bindings[i]) : traces[i].Judge()))];
        return Tell(line, new(plan.Book.Title, plan.Book.RoadNumberInUse, results, run));
    }

    private Task<int> Tell(ParseResult line, RuleResult result)
    {
        TextWriter output = line.InvocationConfiguration.Output;
        if (line.GetValue(_show) is { } paragraph)
        {
            RuleSetResult[] shown = [.. result.Sets.Select(s => s.Below(paragraph)).Where(s => s.Findings.Length > 0)];
            if (shown.Length == 0)
            {
                string[] rows = [.. result.Sets.SelectMany(s => s.Findings).Select(f => f.Row.Paragraph)];
                return WrongUse(line, $"No row is named `{paragraph}`; {Nearest.DidYouMean(paragraph, rows) ?? "`rules` without --show lists them"}");
            }

            result = result with { Sets = shown };
        }

        if (line.GetValue(Json))
        {
            Answer.Write(output, RulesAnswer.Of(result));
        }
        else if (line.GetValue(_show) is null)
        {
            RulesText.Print(output, result);
        }
        else
        {
            RulesText.PrintRows(output, result);
        }

        return Task.FromResult(result.Sets.Any(s => s.Count(RuleVerdict.NotKept) > 0) || result.Run?.Trouble is not null ? ExitCode.No : ExitCode.Good);
    }

    private RunRequest? Request(ParseResult line, Plan plan, string situation, DiagnosticList found)
    {
        SituationStart? start = SituationStart.Bind(plan, plan.Book.Situations[situation], found);
        if (RunVerb.CardFor(line, plan, line.GetValue(_card), found) is not var (title, choices) || start is null || found.HasErrors)
        {
            return null;
        }

        SimTime? length = RunVerb.Time(line.GetValue(_for), found) ?? (choices.IsEmpty ? SimTime.FromSeconds(1800) : null);
        return found.HasErrors ? null : new(plan, start, choices, title, line.GetValue(_seed), line.GetValue(_case), length, SimTime.FromSeconds(RuleTrace.Every));
    }

    private string? NumberFor(ParseResult line, ClassBook book) =>
        line.GetValue(RoadNumber) ?? (line.GetValue(_run) is { } name ? RoadNumberDraw.Of(book, book.Situations[name], line.GetValue(_seed), line.GetValue(_case)) : null);

    private static bool HasSituation(ParseResult line, ClassBook book, string? name)
    {
        if (name is null || book.Situations.ContainsKey(name))
        {
            return true;
        }

        string hint = Nearest.DidYouMean(name, book.Situations.Keys) ?? $"it has: {string.Join("; ", book.Situations.Keys)}";
        line.InvocationConfiguration.Error.WriteLine($"The book has no situation `{name}`; {hint}");
        return false;
    }

    private static Task<int> NoRules(ParseResult line, string? named) => WrongUse(line, named is null
        ? "There is no folder `rules` here, and none came with the program: name a set with --set FOLDER."
        : $"There is no set of rules `{named}`; {Nearest.DidYouMean(named, RuleFolderFinder.Names) ?? $"there are: {string.Join(", ", RuleFolderFinder.Names)}"}");

    private static Task<int> Refuse(ParseResult line, string folder, DiagnosticList found)
    {
        Findings.Print(line.InvocationConfiguration.Error, folder == "." ? "" : folder, found);
        return Task.FromResult(ExitCode.No);
    }
}
