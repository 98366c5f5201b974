using System.CommandLine;
using Sightglass.Book.Model;
using Sightglass.Cli.Output;
using Sightglass.Cli.Routes;

namespace Sightglass.Cli.Books;

/// <summary>The machine that people know, for every verb that tells what differs from it.</summary>
internal static class KnownMachine
{
    /// <param name="line">The call; its errors are told what is wrong.</param>
    /// <param name="folderNamed">Folder of the book; the usual one where null.</param>
    /// <param name="number">The road number they know; null for the class as described.</param>
    /// <param name="exit">Where the answer is null.</param>
    public static ClassBook? Read(ParseResult line, string? folderNamed, string? number, out int exit)
    {
        exit = ExitCode.WrongUse;
        TextWriter error = line.InvocationConfiguration.Error;
        if (BookFolderFinder.Find(folderNamed) is not { } folder)
        {
            error.WriteLine(folderNamed is null ? "No class book here: name its folder, or stand in it. 'new FOLDER' makes one." : $"There is no folder `{folderNamed}`. 'new {folderNamed}' makes a class book there.");
            return null;
        }

        BookInspection inspection = BookInspection.Read(folder, all: false);
        if (inspection.Book is not { } book)
        {
            Findings.Print(error, folder, inspection.Found);
            exit = ExitCode.No;
            return null;
        }

        if (number is not null && !book.RoadNumbers.ContainsKey(number))
        {
            error.WriteLine(RouteOptions.Unknown("road number", number, book.RoadNumbers.Keys));
            return null;
        }

        exit = ExitCode.Good;
        return number is null ? book : book.For(number);
    }
}
