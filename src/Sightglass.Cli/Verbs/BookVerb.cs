using System.CommandLine;
using Sightglass.Cli.Books;

namespace Sightglass.Cli.Verbs;

/// <summary>A verb that works on a class book.</summary>
internal abstract class BookVerb : Verb
{
    protected BookVerb(string name, string description)
        : base(name, description)
    {
    }

    /// <summary>The folder of the book, of a verb that works on the whole of it.</summary>
    protected Argument<string?> Folder { get; } = new("FOLDER")
    {
        Description = "Folder of the class book. Default: the folder you stand in, else the demo, books/curlew.",
        Arity = ArgumentArity.ZeroOrOne,
    };

    /// <summary>The folder of the book, of a verb that works on something in it.</summary>
    protected Option<string?> BookOption { get; } = new("--book", "-b")
    {
        Description = "Folder of the class book. Default: the folder you stand in, else the demo, books/curlew.",
        HelpName = "FOLDER",
    };

    protected Option<string?> RoadNumber { get; } = new("--road-number") { Description = "The machine of the class whose modifications apply. Default: of a situation, the one that the case draws; else the class as described.", HelpName = "NUMBER" };

    /// <summary>The book that the call names, with the items of its road number; null after saying what is wrong, with the exit code.</summary>
    protected Sightglass.Book.Model.ClassBook? Open(ParseResult line, out int exit)
    {
        exit = ExitCode.WrongUse;
        string? named = line.GetValue(BookOption);
        if (BookFolderFinder.Find(named) is not { } folder)
        {
            NoBook(line, named);
            return null;
        }

        BookInspection inspection = BookInspection.Read(folder, all: false);
        if (inspection.Book is not { } book)
        {
            Output.Findings.Print(line.InvocationConfiguration.Error, folder, inspection.Found);
            exit = ExitCode.No;
            return null;
        }

        string? number = line.GetValue(RoadNumber);
        return !HasRoadNumber(line, inspection, number) ? null : number is null ? book : book.For(number);
    }

    /// <summary>The folder of the book that the call names, once it has been opened.</summary>
    protected string FolderOf(ParseResult line) => BookFolderFinder.Find(line.GetValue(BookOption))!;

    /// <summary>Says that there is no book.</summary>
    protected static Task<int> NoBook(ParseResult line, string? named) => WrongUse(
        line,
        named is null
            ? "No class book here: name its folder, or stand in it. 'new FOLDER' makes one."
            : $"There is no folder `{named}`. 'new {named}' makes a class book there.");

    /// <summary>Whether the book has such a road number; says so where not.</summary>
    protected static bool HasRoadNumber(ParseResult line, BookInspection inspection, string? number)
    {
        if (number is null || inspection.Book!.RoadNumbers.ContainsKey(number))
        {
            return true;
        }

        string hint = Basics.Diagnostics.Nearest.DidYouMean(number, inspection.Book.RoadNumbers.Keys) ?? $"it has {string.Join(", ", inspection.Book.RoadNumbers.Keys)}";
        line.InvocationConfiguration.Error.WriteLine($"The book has no road number `{number}`; {hint}");
        return false;
    }
}
