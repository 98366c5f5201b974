using System.CommandLine;
using Sightglass.Book.Model;
using Sightglass.Cli.Books;
using Sightglass.Cli.Output;
using Sightglass.Cli.Routes;
using Sightglass.Training.Differences;

namespace Sightglass.Cli.Verbs;

/// <summary><c>differences</c>: what is not as people know it.</summary>
internal sealed class DifferencesVerb : BookVerb
{
    private readonly Option<string?> _from = new("--from") { Description = "Folder of the class book that the people know. Default: the same book.", HelpName = "FOLDER" };
    private readonly Option<string?> _fromNumber = new("--from-number") { Description = "The machine of that class that they know. Default: the class as described.", HelpName = "NUMBER" };

    public DifferencesVerb()
        : base("differences", "What is new, gone, moved, works or shows otherwise, for people who know another machine, road number or edition, and the habit that now hurts.")
    {
        Add(BookOption);
        Add(RoadNumber);
        Add(_from);
        Add(_fromNumber);
    }

    public override IReadOnlyList<(string Call, string Says)> Examples =>
    [
        ("differences --road-number 4104", "what differs on one machine of the class"),
        ("differences --road-number 4112 --from-number 4107", "between two machines of the class"),
        ("differences --book books/curlew --from books/smallest", "between two classes"),
    ];

    protected override Task<int> RunAsync(ParseResult line, CancellationToken stop)
    {
        if (Open(line, out int exit) is not { } other || Known(line, out exit) is not { } known)
        {
            return Task.FromResult(exit);
        }

        ItemDifference[] differences = [.. MachineComparison.Of(known, other)];
        TextWriter output = line.InvocationConfiguration.Output;
        if (line.GetValue(Json))
        {
            Answer.Write(output, DifferencesAnswer.Of(known, other, differences));
        }
        else
        {
            DifferencesText.Print(output, known, other, differences);
        }

        return Task.FromResult(ExitCode.Good);
    }

    private ClassBook? Known(ParseResult line, out int exit)
    {
        exit = ExitCode.WrongUse;
        string? named = line.GetValue(_from) ?? line.GetValue(BookOption);
        if (BookFolderFinder.Find(named) is not { } folder)
        {
            NoBook(line, named);
            return null;
        }

        BookInspection inspection = BookInspection.Read(folder, all: false);
        if (inspection.Book is not { } book)
        {
            Findings.Print(line.InvocationConfiguration.Error, folder, inspection.Found);
            exit = ExitCode.No;
            return null;
        }

        string? number = line.GetValue(_fromNumber);
        if (number is not null && !book.RoadNumbers.ContainsKey(number))
        {
            line.InvocationConfiguration.Error.WriteLine(RouteOptions.Unknown("road number", number, book.RoadNumbers.Keys));
            return null;
        }

        exit = ExitCode.Good;
        return number is null ? book : book.For(number);
    }
}
