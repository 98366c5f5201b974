using System.CommandLine;
using Sightglass.Cli.Output;
using Sightglass.Cli.Routes;
using Sightglass.Paper;
using Sightglass.Training.Routes;
using Sightglass.Training.WalkDowns;

namespace Sightglass.Cli.Verbs;

/// <summary><c>walkdown</c>: a phone goes along and brings back what was found.</summary>
internal sealed class WalkDownVerb : BookVerb
{
    private readonly RouteOptions _route = new();
    private readonly Option<string?> _html = new("--html") { Description = "Write the walk-down as one file for a phone: it needs no network and no program.", HelpName = "FILE" };

    public WalkDownVerb()
        : base("walkdown", "Walk down a machine with a phone: what is to be found at each place, photographs, and what differs; then take in what was found.")
    {
        Add(_route.Purpose);
        Add(BookOption);
        Add(RoadNumber);
        Add(_html);
        foreach (Option option in _route.All)
        {
            Add(option);
        }
    }

    public override IReadOnlyList<(string Call, string Says)> Examples =>
    [
        ("walkdown --html walk-down.html --road-number 4107", "the whole machine, as one file for the phone"),
        ("walkdown fuel --html fuel.html", "one system only"),
    ];

    protected override Task<int> RunAsync(ParseResult line, CancellationToken stop)
    {
        if (Open(line, out int exit) is not { } book)
        {
            return Task.FromResult(exit);
        }

        if (_route.Read(line, book) is not var (request, spoken))
        {
            return Task.FromResult(ExitCode.WrongUse);
        }

        if (line.GetValue(_html) is not { } file)
        {
            return WrongUse(line, "Say what is wanted: --html FILE writes the walk-down for a phone.");
        }

        if (RoutePlanner.Plan(spoken, request) is not { } plan)
        {
            return RouteVerb.NoWalk(line);
        }

        WalkDownSheet sheet = WalkDownSheet.Of(plan);
        File.WriteAllText(file, WalkDownPaper.Alone(sheet));
        WalkDownAnswer answer = new(file, sheet.Book, sheet.RoadNumber, sheet.Purpose, sheet.Stops.Length, sheet.Stops.Sum(s => s.Items.Length));
        if (line.GetValue(Json))
        {
            Answer.Write(line.InvocationConfiguration.Output, answer);
        }
        else
        {
            line.InvocationConfiguration.Output.WriteLine($"Written: {file}. {answer.Items} things at {answer.Places} places. Bring it onto the phone and open it there; docs/guide/a-walk-down.md says how.");
        }

        return Task.FromResult(ExitCode.Good);
    }
}
