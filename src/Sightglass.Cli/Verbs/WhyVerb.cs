using System.CommandLine;
using Sightglass.Basics.Diagnostics;
using Sightglass.Basics.Time;
using Sightglass.Book.Model;
using Sightglass.Cli.Books;
using Sightglass.Cli.Output;
using Sightglass.Plant.Plans;
using Sightglass.Trials.Causes;

namespace Sightglass.Cli.Verbs;

/// <summary><c>why</c>: what may keep a fact from coming to hold, and where to look for it.</summary>
internal sealed class WhyVerb : BookVerb
{
    private readonly Argument<string> _fact = new("FACT") { Description = "A fact of the book that does not come to hold: \"the machine loads\"." };
    private readonly Option<string?> _in = new("--in") { Description = "A situation in which it comes to hold while nothing is wrong.", HelpName = "SITUATION", Required = true };
    private readonly Option<string> _within = new("--within") { Description = "How long it takes to come to hold.", HelpName = "TIME", DefaultValueFactory = _ => "1 min" };
    private readonly Option<string[]> _seen = new("--seen") { Description = "What was looked at already: \"NAME: as usual\", \"NAME: lower\", \"NAME: higher\"; of a lamp or a sign dark or gone is lower, lit or there is higher.", HelpName = "LOOK", DefaultValueFactory = _ => [] };
    private readonly Option<int> _try = new("--try") { Description = "Put something wrong in so many cases, and look for it.", HelpName = "N" };
    private readonly Option<int> _faults = new("--faults") { Description = "With --try: things put wrong at once.", HelpName = "1|2", DefaultValueFactory = _ => 1 };
    private readonly Option<ulong> _seed = new("--seed") { Description = "Settles all draws.", DefaultValueFactory = _ => 1 };

    public WhyVerb()
        : base("why", "Why a fact does not come to hold: everything that may keep it from holding is put wrong, one at a time, and the shortest order of looks is made of what shows.")
    {
        Add(_fact);
        Add(_in);
        Add(BookOption);
        Add(RoadNumber);
        foreach (Option option in new Option[] { _within, _seen, _try, _faults, _seed })
        {
            Add(option);
        }
    }

    public override IReadOnlyList<(string Call, string Says)> Examples =>
    [
        ("why \"the train is lit\" --in \"a set-up train\"", "where to look for what keeps it dark, nearest and likeliest first"),
        ("why \"the train is lit\" --in \"a set-up train\" --seen \"train line complete lamp: lower\"", "and what it may be once a lamp was seen dark"),
        ("why \"the train is lit\" --in \"a set-up train\" --try 1000", "how often that order finds what was put wrong"),
    ];

    protected override Task<int> RunAsync(ParseResult line, CancellationToken stop)
    {
        string? named = line.GetValue(BookOption);
        if (BookFolderFinder.Find(named) is not { } folder)
        {
            return NoBook(line, named);
        }

        BookInspection inspection = BookInspection.Read(folder, all: false);
        if (inspection.Book is not { } book)
        {
            Findings.Print(line.InvocationConfiguration.Error, folder, inspection.Found);
            return Task.FromResult(ExitCode.No);
        }

        DiagnosticList wrong = [];
        SimTime? within = RunVerb.Time(line.GetValue(_within), wrong);
        string wanted = line.GetValue(_in)!;
        if (within is null || wrong.HasErrors)
        {
            return WrongUse(line, $"--within is a time such as 30 s or 2 min, not `{line.GetValue(_within)}`");
        }

        if (!book.Situations.TryGetValue(wanted, out Situation? situation))
        {
            return WrongUse(line, $"The book has no situation `{wanted}`; {Nearest.DidYouMean(wanted, book.Situations.Keys) ?? $"it has: {string.Join("; ", book.Situations.Keys)}"}");
        }

        if (line.GetValue(_faults) is not (1 or 2) || line.GetValue(_try) < 0)
        {
            return WrongUse(line, "--faults is 1 or 2, and --try 1 or more");
        }

        return HasRoadNumber(line, inspection, line.GetValue(RoadNumber)) ? Search(line, inspection.Fleet.For(line.GetValue(RoadNumber), situation.Train)!, situation, within.Value, stop) : Task.FromResult(ExitCode.WrongUse);
    }

    private Task<int> Search(ParseResult line, Plan plan, Situation situation, SimTime within, CancellationToken stop)
    {
        string name = line.GetValue(_fact)!;
        if (!plan.Book.Facts.TryGetValue(name, out Fact? fact))
        {
            return WrongUse(line, $"The book has no fact `{name}`; {Nearest.DidYouMean(name, plan.Book.Facts.Keys) ?? $"it has: {string.Join("; ", plan.Book.Facts.Keys)}"}");
        }

        if (CauseTable.Make(plan, situation, fact, within, line.GetValue(_seed), out int holds, stop) is not { } table)
        {
            return WrongUse(line, $"In `{situation.Name}` it comes to hold in {holds} of {CauseTable.UsualCases} cases though nothing is wrong: name a situation in which it always does, or a longer --within.");
        }

        Belief belief = new(table);
        foreach (string seen in line.GetValue(_seen)!)
        {
            if (LookWords.Read(seen, table, out int look, out int shows) is { } trouble)
            {
                return WrongUse(line, trouble);
            }

            belief.Take(look, shows);
        }

        TextWriter output = line.InvocationConfiguration.Output;
        CauseTrialResult? tried = line.GetValue(_try) is > 0 and var cases ? CauseTrial.Run(table, cases, line.GetValue(_seed), line.GetValue(_faults)) : null;
        WhyAnswer answer = WhyAnswer.Of(table, belief, within, tried);
        if (line.GetValue(Json))
        {
            Answer.Write(output, answer);
        }
        else
        {
            WhyText.Print(output, plan.Book, answer);
        }

        return Task.FromResult(ExitCode.Good);
    }
}
