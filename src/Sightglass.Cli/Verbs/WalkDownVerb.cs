using System.CommandLine;
using Sightglass.Book.Model;
using Sightglass.Cli.Books;
using Sightglass.Cli.Data;
using Sightglass.Cli.Output;
using Sightglass.Cli.Routes;
using Sightglass.Paper;
using Sightglass.Storage.Proposals;
using Sightglass.Storage.WalkDowns;
using Sightglass.Training.Routes;
using Sightglass.Training.WalkDowns;

namespace Sightglass.Cli.Verbs;

/// <summary><c>walkdown</c>: a phone goes along and brings back what was found.</summary>
internal sealed class WalkDownVerb : BookVerb
{
    private readonly RouteOptions _route = new();
    private readonly Option<string?> _html = OutputFile.Option("--html", "Write the walk-down as one file for a phone: it needs no network and no program.");

    private readonly Option<string?> _take = new("--take") { Description = "Take in the result file that a phone handed in; taking it twice does no harm.", HelpName = "FILE" };
    private readonly Option<string?> _data = DataOption.Create();

    public WalkDownVerb()
        : base("walkdown", "Walk down a machine with a phone: what is to be found at each place, photographs, and what differs; then take in what was found.")
    {
        Add(_route.Purpose);
        Add(BookOption);
        Add(RoadNumber);
        Add(_html);
        Add(_take);
        Add(_data);
        foreach (Option option in _route.All)
        {
            Add(option);
        }
    }

    public override IReadOnlyList<(string Call, string Says)> Examples =>
    [
        ("walkdown --html walk-down.html --road-number 4107", "the whole machine, as one file for the phone"),
        ("walkdown fuel --html fuel.html", "one system only"),
        ("walkdown --take walk-down.json", "what was found comes in, and proposals for the book with it"),
    ];

    protected override Task<int> RunAsync(ParseResult line, CancellationToken stop)
    {
        if (Open(line, out int exit) is not { } book)
        {
            return Task.FromResult(exit);
        }

        return line.GetValue(_take) is { } result ? Task.FromResult(Take(line, book, result))
            : line.GetValue(_html) is { } file ? Write(line, book, file)
            : Task.FromResult(Tell(line, book));
    }

    private Task<int> Write(ParseResult line, ClassBook book, string file)
    {
        if (_route.Read(line, book) is not var (request, spoken))
        {
            return Task.FromResult(ExitCode.WrongUse);
        }

        if (RoutePlanner.Plan(spoken, request) is not { } plan)
        {
            return RouteVerb.NoWalk(line);
        }

        WalkDownSheet sheet = WalkDownSheet.Of(plan);
        OutputFile.Write(file, WalkDownPaper.Alone(sheet));
        int items = sheet.Stops.Sum(s => s.Items.Length);
        if (line.GetValue(Json))
        {
            Answer.Write(line.InvocationConfiguration.Output, new WalkDownAnswer { Html = file, Places = sheet.Stops.Length, Items = items });
        }
        else
        {
            line.InvocationConfiguration.Output.WriteLine($"Written: {file}. {items} things at {sheet.Stops.Length} places. Bring it onto the phone and open it there; docs/guide/a-walk-down.md says how.");
        }

        return Task.FromResult(ExitCode.Good);
    }

    private int Take(ParseResult line, ClassBook book, string file)
    {
        TextWriter error = line.InvocationConfiguration.Error;
        List<string> wrong = [];
        if (Bytes(file, wrong) is not { } bytes || WalkDownReader.Read(bytes, book, wrong) is not { } result)
        {
            foreach (string complaint in wrong)
            {
                error.WriteLine($"{file}: {complaint}");
            }

            error.WriteLine("Nothing was taken in.");
            return ExitCode.No;
        }

        foreach (string note in result.Notes)
        {
            error.WriteLine($"{file}: {note}");
        }

        return DataOption.With(line, _data, FolderOf(line), data =>
        {
            TakenWalkDown taken = new WalkDownDesk(data, new ProposalDesk(data, FolderOf(line), TimeProvider.System), TimeProvider.System).Take(result);
            if (line.GetValue(Json))
            {
                Answer.Write(line.InvocationConfiguration.Output, new WalkDownAnswer { New = taken.New, Newer = taken.Newer, Known = taken.Known, Proposed = taken.Proposed });
            }
            else
            {
                line.InvocationConfiguration.Output.WriteLine($"Taken in from {result.By}: {taken.New} new, {taken.Newer} later than what was here, {taken.Known} known already. {(taken.Proposed == 0 ? "Nothing new for the book." : $"{Findings.Many(taken.Proposed, "proposal")} for the book: 'sightglass proposals' shows {(taken.Proposed == 1 ? "it" : "them")}.")}");
            }

            return ExitCode.Good;
        });
    }

    private static byte[]? Bytes(string file, List<string> wrong)
    {
        try
        {
            if (new FileInfo(file).Length > WalkDownResult.MostBytes)
            {
                wrong.Add($"the file is larger than {WalkDownResult.MostBytes >> 20} MiB; take fewer photographs at a time");
                return null;
            }

            return File.ReadAllBytes(file);
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            wrong.Add($"cannot be read ({e.Message.TrimEnd('.')}); name the file that the phone saved");
            return null;
        }
    }

    /// <summary>What was found so far.</summary>
    private int Tell(ParseResult line, ClassBook book) => DataOption.With(line, _data, FolderOf(line), data =>
    {
        string? number = line.GetValue(RoadNumber);
        WalkDownEntry[] all = [.. new WalkDownDesk(data, new ProposalDesk(data, FolderOf(line), TimeProvider.System), TimeProvider.System).All(book.Title).Where(e => number is null || e.RoadNumber == number)];
        if (line.GetValue(Json))
        {
            Answer.Write(line.InvocationConfiguration.Output, new WalkDownAnswer { Found = [.. all.Select(WalkDownAnswer.Finding.Of)] });
        }
        else
        {
            WalkDownText.Print(line.InvocationConfiguration.Output, all);
        }

        return ExitCode.Good;
    });
}
