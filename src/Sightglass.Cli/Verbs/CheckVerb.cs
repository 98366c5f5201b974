using System.CommandLine;
using Sightglass.Basics.Diagnostics;
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
    private readonly Option<string?> _missing = OutputFile.Option("--missing", "Write the texts that the book does not say in the language of --language into this file, ready to be filled in.");

    public CheckVerb()
        : base("check", "Read a class book with its situations and cards, and say everything that is wrong, each with its place and what would be right.")
    {
        Add(Folder);
        Add(_missing);
    }

    public override IReadOnlyList<(string Call, string Says)> Examples =>
    [
        ("check books/curlew", "the demo book"),
        ("check my-class --json", "your own, for an editor or a script"),
        ("check books/curlew --language es", "and what of it is not said in Spanish, or is no longer the same"),
        ("check my-class --language es --missing es.yaml", "a beginning for whoever translates it"),
    ];

    protected override Task<int> RunAsync(ParseResult line, CancellationToken stop)
    {
        string? named = line.GetValue(Folder);
        if (BookFolderFinder.Find(named) is not { } folder)
        {
            return NoBook(line, named);
        }

        BookInspection inspection = BookInspection.Read(folder);
        if (inspection.Book is { } read && Tongue.Spoken.Code != Tongue.English.Code)
        {
            CheckLanguage(read, line.GetValue(_missing), inspection.Found);
        }
        else if (line.GetValue(_missing) is not null)
        {
            return WrongUse(line, inspection.Book is null ? "The book has errors: first mend them." : "What is missing in which language? Add --language CODE.");
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

    /// <summary>What of the book is not said in the language that is spoken, or is not the same; into a file that waits for its translations where one is named.</summary>
    private static void CheckLanguage(ClassBook book, string? missing, DiagnosticList found)
    {
        BookWords? words = book.Languages.GetValueOrDefault(Tongue.Spoken.Code);
        if (words is not null)
        {
            WordsCheck.Whole(book, words, found);
            TranslatedCards.Check(book, words, found);
        }
        else if (!found.HasErrors)
        {
            found.Add(WordsCheck.NoWords(Tongue.Spoken));
        }

        if (missing is not null)
        {
            OutputFile.Write(missing, WordsList.Of(WordsCheck.Missing(book, words)));
        }
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
