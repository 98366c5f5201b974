using System.CommandLine;
using Sightglass.Basics.Diagnostics;
using Sightglass.Book.Model;
using Sightglass.Cards.Tree;
using Sightglass.Cli.Books;
using Sightglass.Cli.Output;
using Sightglass.Cli.Tries;
using Sightglass.Trials;
using Sightglass.Trials.Tries;

namespace Sightglass.Cli.Verbs;

/// <summary><c>start</c>: check the book, try its cards, serve the pages.</summary>
internal sealed class StartVerb : PagesVerb
{
    private readonly Option<int> _cases = new("--cases", "-n") { Description = "Cases in which each card is tried first; 0 for none.", DefaultValueFactory = _ => 256 };

    public StartVerb()
        : base("start", "Begin here: check the book, try each of its cards in the situations that are for it, and serve the pages.") => Add(_cases);

    public override IReadOnlyList<(string Call, string Says)> Examples =>
    [
        ("start", "the demo"),
        ("start my-class --cases 64", "your own class"),
        ("start --share", "phones on the same network may walk down the machine"),
        ("start --room", "trainees on the same network come in with a code and work their drills"),
    ];

    protected override Task<int> RunAsync(ParseResult line, CancellationToken stop)
    {
        string? named = line.GetValue(Folder);
        return line.GetValue(_cases) is < 0 or > 10_000_000 ? WrongUse(line, "--cases wants 0 to 10,000,000.")
            : BookFolderFinder.Find(named) is { } folder ? Task.Run(() => StartAsync(line, folder, stop), CancellationToken.None)
            : NoBook(line, named);
    }

    private async Task<int> StartAsync(ParseResult line, string folder, CancellationToken stop)
    {
        BookInspection inspection = BookInspection.Read(folder);
        TextWriter says = line.GetValue(Json) ? TextWriter.Null : line.InvocationConfiguration.Output;
        Findings.Print(inspection.Found.HasErrors ? line.InvocationConfiguration.Error : says, folder == "." ? "" : folder, inspection.Found);
        if (inspection.Found.HasErrors || inspection.Book is not { } book)
        {
            return ExitCode.No;
        }

        says.WriteLine($"{book.Title}: {Findings.Count(inspection.Found)}.{(book.Notice.Length > 0 ? " " + book.Notice : "")}");
        if (line.GetValue(_cases) > 0)
        {
            TryCards(line, inspection, book, says, stop);
        }

        return stop.IsCancellationRequested ? ExitCode.Good : await ServeAsync(line, folder, stop);
    }

    private void TryCards(ParseResult line, BookInspection inspection, ClassBook book, TextWriter says, CancellationToken stop)
    {
        foreach (Card card in inspection.Cards)
        {
            IReadOnlyList<Situation> situations = CardSituations.For(book, card.Source);
            says.WriteLine(situations.Count > 0
                ? $"{card.Title}: tried by simulation in {line.GetValue(_cases)} cases each"
                : $"{card.Title}: no situation says it is for this card (`cards:`), so it is not tried");
            foreach (Situation situation in situations.TakeWhile(_ => !stop.IsCancellationRequested))
            {
                DiagnosticList found = [];
                if (TrialPreparation.Prepare(inspection.Fleet, card, situation, found) is { } setup)
                {
                    TryRequest request = new(setup, card, card.Source, new() { Cases = line.GetValue(_cases) }, LeftOut: false);
                    TryText.PrintBrief(says, TryProgress.Watch(line.InvocationConfiguration.Error, request, r => Trier.Run(r, stop)));
                }
                else
                {
                    Findings.Print(says, inspection.Folder, found);
                }
            }
        }
    }
}
