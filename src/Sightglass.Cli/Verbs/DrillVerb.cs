using System.Collections.Immutable;
using System.CommandLine;
using Sightglass.Basics.Diagnostics;
using Sightglass.Book.Model;
using Sightglass.Cards.Tree;
using Sightglass.Cli.Books;
using Sightglass.Cli.Output;
using Sightglass.Training.Drills;
using Sightglass.World.Runs;
using Sightglass.World.Situations;

namespace Sightglass.Cli.Verbs;

/// <summary><c>drill</c>: what a person is to practise, run without pages: worked by a card, or by nobody.</summary>
internal sealed class DrillVerb : BookVerb
{
    private readonly Argument<string?> _drill = new("DRILL") { Description = "Name of a drill in the book. Default: list them, or check all.", Arity = ArgumentArity.ZeroOrOne };
    private readonly Option<string?> _card = new("--card") { Description = "Work it by this card (a file, or a title in the book) and evaluate what came of it.", HelpName = "CARD" };
    private readonly Option<bool> _idle = new("--idle") { Description = "Let nobody do anything, and evaluate what came of it." };
    private readonly Option<ulong> _case = new("--case") { Description = "Which variant of its situation.", HelpName = "K" };
    private readonly Option<ulong> _seed = new("--seed") { Description = "Settles all draws, with the case.", DefaultValueFactory = _ => 1 };
    private readonly Option<bool> _check = new("--check") { Description = "Show that it can be used: its cards pass it, doing nothing does not, and which steps it does not miss." };
    private readonly Option<int> _cases = new("--cases", "-n") { Description = "How many variants are checked.", DefaultValueFactory = _ => 16 };
    private readonly Option<bool> _shortcuts = new("--shortcuts") { Description = "Leave out each step of its cards in turn as well." };

    public DrillVerb()
        : base("drill", "Drills for people: what each asks, whether it can be passed, and what the evaluation of a run says.")
    {
        Add(_drill);
        Add(BookOption);
        Add(_card);
        Add(_idle);
        Add(_case);
        Add(_seed);
        Add(_check);
        Add(_cases);
        Add(_shortcuts);
    }

    public override IReadOnlyList<(string Call, string Says)> Examples =>
    [
        ("drill", "the drills of the demo"),
        ("drill \"a compartment leaks at a stand\"", "what is read out before one of them begins"),
        ("drill \"a compartment leaks at a stand\" --card empty-a-leaking-compartment", "worked by a card: the story and the evaluation sheet"),
        ("drill \"a compartment leaks at a stand\" --check --cases 4", "whether it can be used"),
    ];

    protected override Task<int> RunAsync(ParseResult line, CancellationToken stop) => Task.Run(() => Answered(line, stop), CancellationToken.None);

    private int Answered(ParseResult line, CancellationToken stop)
    {
        string? named = line.GetValue(BookOption);
        if (BookFolderFinder.Find(named) is not { } folder)
        {
            return NoBook(line, named).Result;
        }

        BookInspection inspection = BookInspection.Read(folder, all: false);
        (TextWriter output, TextWriter error) = (line.InvocationConfiguration.Output, line.InvocationConfiguration.Error);
        if (inspection.Book is not { } book)
        {
            Findings.Print(error, folder, inspection.Found);
            return ExitCode.No;
        }

        if (line.GetValue(_cases) is < 1 or > 100_000)
        {
            return WrongUse(line, "--cases wants 1 to 100,000.").Result;
        }

        string? name = line.GetValue(_drill);
        Drill? drill = null;
        if (name is not null && !book.Drills.TryGetValue(name, out drill))
        {
            error.WriteLine($"The book has no drill `{name}`; {Nearest.DidYouMean(name, book.Drills.Keys) ?? (book.Drills.IsEmpty ? "it has none" : $"it has {string.Join("; ", book.Drills.Keys)}")}");
            return ExitCode.WrongUse;
        }

        if (line.GetValue(_check))
        {
            return Check(line, inspection, drill is null ? [.. book.Drills.Values.OrderBy(d => d.Span)] : [drill], stop);
        }

        if (drill is null)
        {
            DrillText.PrintAll(output, book, line.GetValue(Json));
            return ExitCode.Good;
        }

        if (line.GetValue(_card) is null && !line.GetValue(_idle))
        {
            DrillText.PrintBrief(output, book, drill, line.GetValue(Json));
            return ExitCode.Good;
        }

        return Run(line, inspection, drill);
    }

    private int Run(ParseResult line, BookInspection inspection, Drill drill)
    {
        (TextWriter output, TextWriter error) = (line.InvocationConfiguration.Output, line.InvocationConfiguration.Error);
        DiagnosticList found = [];
        CaseDraws draws = new(line.GetValue(_seed), line.GetValue(_case));
        if (new DrillVariants(inspection.Fleet, drill).For(draws, found) is not { } bound)
        {
            Findings.Print(error, inspection.Folder, found);
            return ExitCode.No;
        }

        ImmutableArray<ProgramChoice> choices = [];
        if (line.GetValue(_card) is { } named)
        {
            if (CardSource.Find(named, inspection.Book!, error, translated: false) is not { } text)
            {
                return ExitCode.WrongUse;
            }

            if (CardSource.Compile(text, bound.Plan, found) is not { } compiled)
            {
                Findings.Print(error, inspection.Folder, found);
                return ExitCode.No;
            }

            choices = compiled.Choices;
            if (DrillCards.Stranger(bound, choices) is { } holder)
            {
                error.WriteLine($"The card is for {holder}, and the trainee is {drill.Role}.");
                return ExitCode.WrongUse;
            }

            AskedPeople.Check(choices, bound.Situation, found);
            if (found.HasErrors)
            {
                Findings.Print(error, inspection.Folder, found);
                return ExitCode.No;
            }
        }

        DrillResult result = DrillTrial.Run(bound, draws, choices, tell: true);
        if (line.GetValue(Json))
        {
            Answer.Write(output, DrillAnswer.Of(bound, draws, result));
        }
        else
        {
            DrillText.Print(output, bound, result);
        }

        return result.IsPassed ? ExitCode.Good : ExitCode.No;
    }

    private int Check(ParseResult line, BookInspection inspection, ImmutableArray<Drill> drills, CancellationToken stop)
    {
        (TextWriter output, TextWriter error) = (line.InvocationConfiguration.Output, line.InvocationConfiguration.Error);
        List<(Drill Drill, DrillCheckResult Result)> results = [];
        DiagnosticList found = [];
        foreach (Drill drill in drills.TakeWhile(_ => !stop.IsCancellationRequested))
        {
            DrillVariants variants = new(inspection.Fleet, drill);
            if (variants.For(new(line.GetValue(_seed), 0), found) is not { } bound || DrillCards.Of(bound, found) is not { } cards)
            {
                continue;
            }

            DrillCheckResult result = DrillCheck.Run(variants, cards, line.GetValue(_seed), line.GetValue(_cases), found, line.GetValue(_shortcuts), stop);
            results.Add((drill, result));
            if (!line.GetValue(Json))
            {
                DrillText.Print(output, drill, result);
            }
        }

        Findings.Print(error, inspection.Folder, found);
        if (line.GetValue(Json))
        {
            Answer.Write(output, DrillCheckAnswer.Of(inspection.Book!, results));
        }

        return !found.HasErrors && results.Count == drills.Length && results.All(r => r.Result.IsGood) ? ExitCode.Good : ExitCode.No;
    }
}
