using System.CommandLine;
using Sightglass.Basics.Diagnostics;
using Sightglass.Book.Model;
using Sightglass.Cli.Books;
using Sightglass.Cli.Output;
using Sightglass.Training.Bets;

namespace Sightglass.Cli.Verbs;

/// <summary><c>bet</c>: a question about what the machine will do, run to its answer.</summary>
internal sealed class BetVerb : BookVerb
{
    private readonly Argument<string?> _bet = new("BET") { Description = "Name of a bet in the book. Default: list them.", Arity = ArgumentArity.ZeroOrOne };

    public BetVerb()
        : base("bet", "Ask a group what the machine will do, then run it: which answer comes true, and what happened on the way.")
    {
        Add(_bet);
        Add(BookOption);
    }

    public override IReadOnlyList<(string Call, string Says)> Examples =>
    [
        ("bet", "the bets of the demo"),
        ("bet \"both valves stay open\"", "one of them, run"),
    ];

    protected override Task<int> RunAsync(ParseResult line, CancellationToken stop)
    {
        string? book = line.GetValue(BookOption);
        return BookFolderFinder.Find(book) is { } folder ? Task.FromResult(Answered(line, folder)) : NoBook(line, book);
    }

    private int Answered(ParseResult line, string folder)
    {
        BookInspection inspection = BookInspection.Read(folder, all: false);
        TextWriter error = line.InvocationConfiguration.Error;
        if (inspection.Book is not { } book)
        {
            Findings.Print(error, folder, inspection.Found);
            return ExitCode.No;
        }

        string? name = line.GetValue(_bet);
        if (name is null)
        {
            BetText.PrintAll(line.InvocationConfiguration.Output, book, line.GetValue(Json));
            return ExitCode.Good;
        }

        if (!book.Bets.TryGetValue(name, out Bet? bet))
        {
            error.WriteLine($"The book has no bet `{name}`; {Nearest.DidYouMean(name, book.Bets.Keys) ?? (book.Bets.IsEmpty ? "it has none" : $"it has {string.Join("; ", book.Bets.Keys)}")}");
            return ExitCode.WrongUse;
        }

        DiagnosticList found = [];
        if (BetBinder.Bind(inspection.Fleet, bet, found) is not { } bound)
        {
            Findings.Print(error, folder, found);
            return ExitCode.No;
        }

        BetResult result = BetRun.Run(bound);
        if (line.GetValue(Json))
        {
            Answer.Write(line.InvocationConfiguration.Output, BetAnswer.Of(bound, result));
        }
        else
        {
            BetText.Print(line.InvocationConfiguration.Output, bound, result);
        }

        return result.CameTrue >= 0 ? ExitCode.Good : ExitCode.No;
    }
}
