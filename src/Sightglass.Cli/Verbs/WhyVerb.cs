using System.CommandLine;
using Sightglass.Basics.Diagnostics;
using Sightglass.Book.Model;
using Sightglass.Cli.Books;
using Sightglass.Cli.Output;
using Sightglass.Trials.Causes;

namespace Sightglass.Cli.Verbs;

/// <summary><c>why</c>: what may keep something from coming about, and where to look for it.</summary>
internal sealed class WhyVerb : BookVerb
{
    private readonly Argument<string?> _search = new("SEARCH") { Description = "A search of the book: \"it does not load\". Default: all of them are listed.", Arity = ArgumentArity.ZeroOrOne };
    private readonly Option<string[]> _seen = new("--seen") { Description = "What was looked at already, and what it showed: \"load lamp: dark\", \"isolation switch: as usual\"; for a reading also lower and higher.", HelpName = "LOOK", DefaultValueFactory = _ => [] };
    private readonly Option<int> _try = new("--try") { Description = "Put something wrong in so many cases, and look for it.", HelpName = "N" };
    private readonly Option<int> _faults = new("--faults") { Description = "With --try: things put wrong at once.", HelpName = "1|2", DefaultValueFactory = _ => 1 };
    private readonly Option<ulong> _seed = new("--seed") { Description = "Settles all draws.", DefaultValueFactory = _ => 1 };

    public WhyVerb()
        : base("why", "Why something does not come about: everything that may keep it from coming is put wrong, one at a time, and an order of looks is made of what then shows.")
    {
        Add(_search);
        Add(BookOption);
        Add(RoadNumber);
        foreach (Option option in new Option[] { _seen, _try, _faults, _seed })
        {
            Add(option);
        }
    }

    public override IReadOnlyList<(string Call, string Says)> Examples =>
    [
        ("why", "what the book looks into"),
        ("why \"it does not load\"", "where to look for what keeps it from loading, nearest and likeliest first"),
        ("why \"it does not load\" --seen \"load lamp: dark\" --seen \"loading lamp E: lit\"", "and what it may be once something was seen"),
        ("why \"it does not load\" --try 200", "how often that order finds what was put wrong"),
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

        if (line.GetValue(_faults) is not (1 or 2) || line.GetValue(_try) < 0)
        {
            return WrongUse(line, "--faults is 1 or 2, and --try 1 or more");
        }

        if (line.GetValue(_search) is not { } name)
        {
            if (line.GetValue(Json))
            {
                Answer.Write(line.InvocationConfiguration.Output, WhyListAnswer.Of(book));
            }
            else
            {
                WhyText.List(line.InvocationConfiguration.Output, book);
            }

            return Task.FromResult(ExitCode.Good);
        }

        if (!book.Searches.TryGetValue(name, out Search? search))
        {
            return WrongUse(line, $"The book has no search `{name}`; {Nearest.DidYouMean(name, book.Searches.Keys) ?? (book.Searches.IsEmpty ? "it has none" : $"it has: {string.Join("; ", book.Searches.Keys)}")}");
        }

        if (!HasRoadNumber(line, inspection, line.GetValue(RoadNumber)))
        {
            return Task.FromResult(ExitCode.WrongUse);
        }

        DiagnosticList found = [];
        if (BoundSearch.Bind(inspection.Fleet, search, found, line.GetValue(RoadNumber)) is not { } bound)
        {
            Findings.Print(line.InvocationConfiguration.Error, folder, found);
            return Task.FromResult(ExitCode.No);
        }

        return Find(line, bound, stop);
    }

    private Task<int> Find(ParseResult line, BoundSearch search, CancellationToken stop)
    {
        if (CauseTable.Make(search, line.GetValue(_seed), out int holds, stop) is not { } table)
        {
            line.InvocationConfiguration.Error.WriteLine($"In `{search.Situation.Name}` it comes to hold in {holds} of {CauseTable.UsualCases} cases though nothing is wrong: let the search name a situation in which it always does, or a longer `within`.");
            return Task.FromResult(ExitCode.No);
        }

        Belief belief = new(table);
        foreach (string seen in line.GetValue(_seen)!)
        {
            if (SeenWords.Read(seen, table, out int look, out int shows) is { } trouble)
            {
                return WrongUse(line, trouble);
            }

            belief.Take(look, shows);
        }

        CauseTrialResult? tried = line.GetValue(_try) is > 0 and var cases ? CauseTrial.Run(table, cases, line.GetValue(_seed), line.GetValue(_faults)) : null;
        WhyAnswer answer = WhyAnswer.Of(table, belief, tried);
        if (line.GetValue(Json))
        {
            Answer.Write(line.InvocationConfiguration.Output, answer);
        }
        else
        {
            WhyText.Print(line.InvocationConfiguration.Output, search.Plan.Book, answer);
        }

        return Task.FromResult(ExitCode.Good);
    }
}
