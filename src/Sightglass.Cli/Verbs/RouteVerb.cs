using System.CommandLine;
using Sightglass.Basics.Diagnostics;
using Sightglass.Basics.Quantities;
using Sightglass.Book.Model;
using Sightglass.Cli.Books;
using Sightglass.Cli.Output;
using Sightglass.Cli.Routes;
using Sightglass.Training.Routes;

namespace Sightglass.Cli.Verbs;

/// <summary><c>route</c>: the shortest walk that shows what is wanted.</summary>
internal sealed class RouteVerb : BookVerb
{
    private readonly Argument<string> _purpose = new("PURPOSE")
    {
        Description = "What is to be shown: a walk of the book, a system, a card, 'all', or 'changes' of a road number.",
        DefaultValueFactory = _ => RouteRequest.Whole,
    };

    private readonly Option<string?> _train = new("--train") { Description = "The train that the machine stands in.", HelpName = "TRAIN" };
    private readonly Option<string?> _from = new("--from") { Description = "Where it begins. Default: where the walk round the machine does.", HelpName = "PLACE" };
    private readonly Option<string?> _to = new("--to") { Description = "Where it ends. Default: at the last stop.", HelpName = "PLACE" };
    private readonly Option<string[]> _closed = new("--closed") { Description = "Places at which nobody of the group may be; 'left side' and the like close a whole side.", HelpName = "PLACE", AllowMultipleArgumentsPerToken = true };
    private readonly Option<string?> _role = new("--role") { Description = "Whose places the group keeps to.", HelpName = "ROLE" };
    private readonly Option<int?> _people = new("--people") { Description = "How many walk: where there is less room they take turns.", HelpName = "N" };
    private readonly Option<string?> _pace = new("--pace") { Description = "How fast the group walks on the ground. Default: 1.3 m/s.", HelpName = "SPEED" };

    public RouteVerb()
        : base("route", "The shortest walk that shows what you want: stops, what is shown at each, metres, minutes, protection to arrange.")
    {
        Add(_purpose);
        Add(BookOption);
        Add(RoadNumber);
        foreach (Option option in new Option[] { _train, _from, _to, _closed, _role, _people, _pace })
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
        string? named = line.GetValue(BookOption);
        if (BookFolderFinder.Find(named) is not { } folder)
        {
            return NoBook(line, named);
        }

        BookInspection inspection = BookInspection.Read(folder, all: false);
        if (inspection.Book is not { } book)
        {
            Findings.Print(line.InvocationConfiguration.Error, folder, inspection.Found);
            return Task.FromResult(ExitCode.No);
        }

        string? number = line.GetValue(RoadNumber);
        if (!HasRoadNumber(line, inspection, number))
        {
            return Task.FromResult(ExitCode.WrongUse);
        }

        book = number is null ? book : book.For(number);
        if (line.GetValue(_train) is { } train)
        {
            if (!book.Trains.ContainsKey(train))
            {
                return WrongUse(line, Unknown("train", train, book.Trains.Keys));
            }

            book = book.Coupled(train);
        }

        return Route(line, book);
    }

    private Task<int> Route(ParseResult line, ClassBook book)
    {
        if (PurposeFinder.Find(line.GetValue(_purpose)!, book, line.InvocationConfiguration.Error) is not var (asked, spoken))
        {
            return Task.FromResult(ExitCode.WrongUse);
        }

        if (Bounded(line, asked, spoken, out string? wrong) is not { } request)
        {
            return WrongUse(line, wrong!);
        }

        TextWriter output = line.InvocationConfiguration.Output;
        if (RoutePlanner.Plan(spoken, request) is not { } plan)
        {
            line.InvocationConfiguration.Error.WriteLine("There is no such walk: its start is closed, its end cannot be reached, or its order goes in a circle.");
            return Task.FromResult(ExitCode.No);
        }

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

    /// <summary>The request within the bounds that the call names; null where a name or a value is wrong.</summary>
    private RouteRequest? Bounded(ParseResult line, RouteRequest asked, ClassBook book, out string? wrong)
    {
        wrong = null;
        string? from = line.GetValue(_from) ?? asked.From;
        string? to = line.GetValue(_to) ?? asked.To;
        string? role = line.GetValue(_role) ?? asked.Role;
        List<string> closed = [.. asked.Closed];
        foreach (string place in line.GetValue(_closed) ?? [])
        {
            string[] side = [.. RouteSides.PlacesOf(book, place)];
            closed.AddRange(side.Length > 0 ? side : [place]);
        }

        double pace = RouteRequest.OrdinaryPace;
        if (line.GetValue(_pace) is { } typed && (PaceOf(typed) is not { } walked || (pace = walked) <= 0))
        {
            wrong = $"`{typed}` is no pace: write a speed such as `1.0 m/s`";
        }

        foreach (string place in closed.Append(from).Append(to).OfType<string>().Where(p => !book.Places.ContainsKey(p)))
        {
            wrong ??= Unknown("place", place, book.Places.Keys.Concat(RouteSides.Names));
        }

        if (role is not null && !book.Roles.ContainsKey(role))
        {
            wrong ??= Unknown("role", role, book.Roles.Keys);
        }

        if (line.GetValue(_people) is < 1)
        {
            wrong ??= "--people is 1 or more";
        }

        return wrong is null ? asked with { From = from, To = to, Role = role, Closed = [.. closed], People = line.GetValue(_people), Pace = pace } : null;
    }

    private static double? PaceOf(string text) =>
        QuantityText.TryParse(text, new SourceText("pace", text).Between(0, text.Length), Dimension.Speed, [], out Quantity pace) ? pace.Si : null;

    private static string Unknown(string what, string named, IEnumerable<string> known) =>
        $"The book has no {what} `{named}`; {Nearest.DidYouMean(named, known) ?? $"it has {string.Join(", ", known.Order(StringComparer.Ordinal).Take(12).Select(n => $"`{n}`"))}"}";
}
