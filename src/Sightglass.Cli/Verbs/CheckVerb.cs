using System.CommandLine;
using Sightglass.Basics.Language;
using Sightglass.Book.Language;
using Sightglass.Book.Model;
using Sightglass.Cards;
using Sightglass.Cli.Books;
using Sightglass.Cli.Output;

namespace Sightglass.Cli.Verbs;

/// <summary><c>check</c>: everything that is wrong with a book, at once.</summary>
internal sealed class CheckVerb : BookVerb
{
    public CheckVerb()
        : base("check", "Read a class book with its situations and cards, and say everything that is wrong, each with its place and what would be right.") =>
        Add(Folder);

    public override IReadOnlyList<(string Call, string Says)> Examples =>
    [
        ("check books/curlew", "the demo book"),
        ("check my-class --json", "your own, for an editor or a script"),
        ("check books/curlew --language es", "and what of it is not said in Spanish, or is no longer the same"),
    ];

    protected override Task<int> RunAsync(ParseResult line, CancellationToken stop)
    {
        string? named = line.GetValue(Folder);
        if (BookFolderFinder.Find(named) is not { } folder)
        {
            return NoBook(line, named);
        }

        BookInspection inspection = BookInspection.Read(folder);
        if (inspection.Book is { } translated && translated.Languages.GetValueOrDefault(Tongue.Spoken.Code) is { } words)
        {
            WordsReader.CheckWhole(translated, words, inspection.Found);
            TranslatedCards.Check(translated, words, inspection.Found);
        }

        TextWriter output = line.InvocationConfiguration.Output;
        if (line.GetValue(Json))
        {
            Answer.Write(output, CheckAnswer.Of(inspection));
        }
        else
        {
            Findings.Print(output, folder == "." ? "" : folder, inspection.Found);
            output.WriteLine($"{folder}: {(inspection.Book is { } book ? Holds(inspection, book) + ": " : "")}{Findings.Count(inspection.Found)}");
        }

        return Task.FromResult(inspection.Found.HasErrors ? ExitCode.No : ExitCode.Good);
    }

    private static string Holds(BookInspection inspection, ClassBook book) => string.Join(", ",
    [
        Findings.Many(book.Items.Count, "item"),
        Findings.Many(book.Places.Count, "place"),
        Findings.Many(book.Situations.Count, "situation"),
        Findings.Many(inspection.Cards.Length, "card"),
        Findings.Many(book.RoadNumbers.Count, "road number"),
        .. book.Trains.IsEmpty ? [] : new[] { Findings.Many(book.Cars.Count, "car"), Findings.Many(book.Trains.Count, "train") },
    ]);
}
