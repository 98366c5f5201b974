using System.CommandLine;
using Sightglass.Book.Model;
using Sightglass.Cli.Books;
using Sightglass.Cli.Output;
using Sightglass.Cli.Routes;
using Sightglass.Training.Routes;

namespace Sightglass.Cli.Verbs;

/// <summary><c>route</c>: the shortest walk that shows what is wanted.</summary>
internal sealed class RouteVerb : BookVerb
{
    private readonly RouteOptions _route = new();
    private readonly Option<int?> _people = new("--people") { Description = "How many walk: where there is less room they take turns.", HelpName = "N" };

    public RouteVerb()
        : base("route", "The shortest walk that shows what you want: stops, what is shown at each, metres, minutes, protection to arrange.")
    {
        Add(_route.Purpose);
        Add(BookOption);
        Add(RoadNumber);
        Add(_people);
        foreach (Option option in _route.All)
        {
            Add(option);
        }
    }

    public override IReadOnlyList<(string Call, string Says)> Examples =>
    [
        ("route fuel", "the fuel system, from the first place of the walk"),
        ("route \"before departure\" --people 10", "a walk that the book describes, for ten people"),
        ("route all --closed \"left side\" --role conductor", "what a conductor may go to, with the left side closed"),
    ];

    protected override Task<int> RunAsync(ParseResult line, CancellationToken stop)
    {
        if (Open(line, out int exit) is not { } book)
        {
            return Task.FromResult(exit);
        }

        if (line.GetValue(_people) is < 1)
        {
            return WrongUse(line, "--people is 1 or more");
        }

        if (_route.Read(line, book) is not var (request, spoken))
        {
            return Task.FromResult(ExitCode.WrongUse);
        }

        if (RoutePlanner.Plan(spoken, request with { People = line.GetValue(_people) }) is not { } plan)
        {
            return NoWalk(line);
        }

        TextWriter output = line.InvocationConfiguration.Output;
        if (line.GetValue(Json))
        {
            Answer.Write(output, RouteAnswer.Of(plan));
        }
        else
        {
            RouteText.Print(output, plan);
        }

        return Task.FromResult(ExitCode.Good);
    }

    /// <summary>Says that there is none.</summary>
    public static Task<int> NoWalk(ParseResult line)
    {
        line.InvocationConfiguration.Error.WriteLine("There is no such walk: the book has no places, its start is closed, its end cannot be reached, or its order goes in a circle.");
        return Task.FromResult(ExitCode.No);
    }
}
