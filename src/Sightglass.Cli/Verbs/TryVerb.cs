using System.CommandLine;
using Sightglass.Cli.Books;
using Sightglass.Cli.Output;
using Sightglass.Cli.Tries;
using Sightglass.Paper.Html;
using Sightglass.Paper.Reports;
using Sightglass.Training.Drills;
using Sightglass.Trials.Sweep;
using Sightglass.Trials.Tries;
using Sightglass.World.Situations;

namespace Sightglass.Cli.Verbs;

/// <summary><c>try</c>: a card in many cases of its situations.</summary>
internal sealed class TryVerb : BookVerb
{
    private readonly Argument<string> _card = new("CARD") { Description = "The card: a file, or a title in the book." };

    private readonly Option<string[]> _situations = new("--situation", "-s")
    {
        Description = "Where it is tried. Default: the situations that are said to be for it; else every one in which somebody is who may work by it.",
        HelpName = "NAME",
        DefaultValueFactory = _ => [],
    };

    private readonly Option<int> _cases = new("--cases", "-n") { Description = "How many cases of each situation.", DefaultValueFactory = _ => 1024 };
    private readonly Option<ulong> _seed = new("--seed") { Description = "Settles all draws, with the case.", DefaultValueFactory = _ => 1 };
    private readonly Option<int?> _case = new("--case") { Description = "Only this case, told step by step.", HelpName = "K" };
    private readonly Option<int> _threads = new("--threads") { Description = "How many; 0 for one a processor. The outcomes are the same.", DefaultValueFactory = _ => 0 };
    private readonly Option<bool> _backwards = new("--backwards") { Description = "From the last case to the first. The outcomes are the same." };
    private readonly Option<bool> _leftOut = new("--left-out") { Description = "Try it also with each step left out: a card that passes without a step is told." };
    private readonly Option<string?> _outcomes = OutputFile.Option("--outcomes", "Write every case's outcome to this file (CSV).");

    private readonly Option<string?> _html = OutputFile.Option("--html", "Write a report that stands alone to this file: verdict, text with what each step is worth, where and how it fails.");
    private readonly Option<string?> _pocket = OutputFile.Option("--pocket", "Write the card as pocket leaves (A6) to this file, stamped with what this trial came to.");
    private readonly Option<string?> _drill = OutputFile.Option("--drill", "Write the failure that is laid out first, and that a card of the book passes, to this file as a drill for people: a file for the book's folder.");
    private readonly Option<string?> _approved = new("--approved-by") { Description = "Who stands for the pocket card. Without, and for a card that fails, it is a draft.", HelpName = "NAME" };

    public TryVerb()
        : base("try", "Try a card by simulation in many cases, and lay out the ones in which it fails.")
    {
        Add(_card);
        Add(_situations);
        Add(BookOption);
        Add(RoadNumber);
        Add(_cases);
        Add(_seed);
        Add(_case);
        Add(_threads);
        Add(_backwards);
        Add(_leftOut);
        Add(_outcomes);
        Add(_html);
        Add(_pocket);
        Add(_approved);
        Add(_drill);
    }

    public override IReadOnlyList<(string Call, string Says)> Examples =>
    [
        ("try empty-a-leaking-compartment --situation \"leaking compartment\" --cases 400", "whether a card holds in the situation it is for"),
        ("try empty-a-leaking-compartment-draft -s \"leaking compartment\" --cases 64", "a card that reads well and fails: on which machines, why, and the least that it takes"),
        ("try empty-a-leaking-compartment -s \"leaking compartment\" --road-number 4112", "on one of the road numbers only, where else each case draws its own"),
        ("try empty-a-leaking-compartment -s \"leaking compartment\" --case 7", "one of these cases as a story"),
        ("try empty-a-leaking-compartment -s \"leaking compartment\" --left-out --html report.html", "a report to send, with what each step is worth"),
        ("try empty-a-leaking-compartment-draft -s \"leaking compartment\" --cases 64 --drill found.yaml", "the case in which it fails as a drill for people"),
        ("try drain-water --cases 512 --pocket drain-water.html", "the card for the pocket, with the stamp of its trial"),
        ("try drain-water --cases 64 --left-out", "which of its steps are needed"),
    ];

    protected override Task<int> RunAsync(ParseResult line, CancellationToken stop) => Task.Run(() => Try(line, stop), CancellationToken.None);

    private int Try(ParseResult line, CancellationToken stop)
    {
        TextWriter error = line.InvocationConfiguration.Error;
        string? named = line.GetValue(BookOption);
        string cardName = line.GetValue(_card)!;
        if (BookFolderFinder.Find(named, cardName) is not { } folder)
        {
            return NoBook(line, named).Result;
        }

        if (line.GetValue(_cases) is < 1 or > 10_000_000 || line.GetValue(_threads) is < 0 or > 64)
        {
            return WrongUse(line, "--cases wants 1 to 10,000,000, --threads 0 to 64.").Result;
        }

        BookInspection inspection = BookInspection.Read(folder, all: false);
        string? only = line.GetValue(RoadNumber);
        if (inspection.Book is not null && !HasRoadNumber(line, inspection, only))
        {
            return ExitCode.WrongUse;
        }

        if (TryRequests.Prepare(inspection, cardName, line.GetValue(_situations)!, only, SweepOptionsOf(line), line.GetValue(_leftOut), error, out int exit) is not { } requests)
        {
            return exit;
        }

        return line.GetValue(_case) is { } one ? TellOne(line, requests, one) : Sweep(line, inspection, requests, stop);
    }

    private SweepOptions SweepOptionsOf(ParseResult line) => new()
    {
        Cases = line.GetValue(_cases),
        Seed = line.GetValue(_seed),
        Threads = line.GetValue(_threads),
        Backwards = line.GetValue(_backwards),
    };

    private int Sweep(ParseResult line, BookInspection inspection, List<TryRequest> requests, CancellationToken stop)
    {
        TextWriter output = line.InvocationConfiguration.Output;
        bool json = line.GetValue(Json);
        List<TryResult> results = [];
        bool brief = requests.Count > 1;
        if (brief && !json)
        {
            output.WriteLine($"{requests[0].Card.Title}: tried by simulation in {requests[0].Options.Cases} cases of each situation, seed {requests[0].Options.Seed}");
        }

        foreach (TryRequest request in requests.TakeWhile(_ => !stop.IsCancellationRequested))
        {
            TryResult result = TryProgress.Watch(line.InvocationConfiguration.Error, request, r => Trier.Run(r, stop));
            results.Add(result);
            if (!json && brief)
            {
                TryText.PrintBrief(output, result);
            }
            else if (!json)
            {
                TryText.Print(output, result);
            }
        }

        if (json)
        {
            Answer.Write(output, TryAnswer.Of(results));
        }

        if (line.GetValue(_outcomes) is { } file)
        {
            OutputFile.Write(file, OutcomeCsv.Of(results));
        }

        if (line.GetValue(_html) is { } page && results.Count > 0)
        {
            OutputFile.Write(page, TrialPage.Write(results));
        }

        if (line.GetValue(_pocket) is { } pocket && results.Count > 0)
        {
            string? approved = line.GetValue(_approved);
            OutputFile.Write(pocket, HtmlPage.Write(TriedCard.Of(results, inspection.Folder, approved, PaperVerb.Today)));
            if (approved is not null && TriedCard.Hindrance(results) is { } hindrance)
            {
                line.InvocationConfiguration.Error.WriteLine($"Not approved: {hindrance}. The pocket card says draft.");
            }
        }

        string? drill = line.GetValue(_drill) is { } made && WriteDrill(made, inspection, results, line.InvocationConfiguration.Error, stop) ? made : null;
        string[] written = [.. new[] { line.GetValue(_outcomes) }.Concat(results.Count > 0 ? [line.GetValue(_html), line.GetValue(_pocket), drill] : []).OfType<string>()];
        if (!json && written.Length > 0)
        {
            output.WriteLine($"Written: {string.Join(", ", written)}.");
        }

        bool good = results.Any(r => r.Trial.Applicable > 0) && results.All(r => r.Trial.Failed == 0 && r.Trial.Undecided == 0);
        return good && !stop.IsCancellationRequested ? ExitCode.Good : ExitCode.No;
    }

    /// <returns>Whether there was one to be written; where not, why is told.</returns>
    private static bool WriteDrill(string file, BookInspection inspection, List<TryResult> results, TextWriter error, CancellationToken stop)
    {
        string why = "nothing failed that could be laid out";
        foreach ((TryResult result, FailureStory failure) in results.SelectMany(r => r.Failures.Select(f => (r, f))))
        {
            CaseDrillDraft draft = CaseDrill.Of(inspection.Fleet.MachineOf(failure.Story.Number, result.Request.Setup.Situation.Train)!, result.Request.Setup, result.Request.Card, failure.Least, IsTaken, _ => false, stop);
            if (draft.Problem is null)
            {
                OutputFile.Write(file, draft.File.Source.Text);
                return true;
            }

            why = draft.Problem;
        }

        error.WriteLine($"No drill was written: {why}.");
        return false;

        bool IsTaken(string name) => inspection.Book!.Situations.ContainsKey(name) || inspection.Book.Drills.ContainsKey(name);
    }

    private int TellOne(ParseResult line, List<TryRequest> requests, int number)
    {
        List<CaseAnswer> answers = [];
        foreach (TryRequest request in requests)
        {
            CaseStory story = CaseStory.Tell(request.Setup, new CaseDraws(line.GetValue(_seed), (ulong)number));
            answers.Add(CaseAnswer.Of(request, line.GetValue(_seed), number, story));
            if (!line.GetValue(Json))
            {
                CaseText.Print(line.InvocationConfiguration.Output, request, story, number);
            }
        }

        if (line.GetValue(Json))
        {
            Answer.Write(line.InvocationConfiguration.Output, new CasesAnswer(BuildName.Text, answers));
        }

        return answers.Any(a => a.Outcome is "failed" or "undecided") ? ExitCode.No : ExitCode.Good;
    }
}
