using System.CommandLine;
using Sightglass.Basics.Diagnostics;
using Sightglass.Basics.Quantities;
using Sightglass.Book.Model;
using Sightglass.Training.Routes;

namespace Sightglass.Cli.Routes;

/// <summary>The bounds of a walk on the command line: for every verb that finds one.</summary>
internal sealed class RouteOptions
{
    private readonly Option<string?> _train = new("--train") { Description = "The train that the machine stands in.", HelpName = "TRAIN" };
    private readonly Option<string?> _from = new("--from") { Description = "Where it begins. Default: where the walk round the machine does.", HelpName = "PLACE" };
    private readonly Option<string?> _to = new("--to") { Description = "Where it ends. Default: at the last stop.", HelpName = "PLACE" };
    private readonly Option<string[]> _closed = new("--closed") { Description = "Places at which nobody of the group may be; 'left side' and the like close a whole side.", HelpName = "PLACE", AllowMultipleArgumentsPerToken = true };
    private readonly Option<string?> _role = new("--role") { Description = "Whose places the group keeps to.", HelpName = "ROLE" };
    private readonly Option<string?> _pace = new("--pace") { Description = "How fast the group walks on the ground. Default: 1.3 m/s.", HelpName = "SPEED" };

    public Argument<string> Purpose { get; } = new("PURPOSE")
    {
        Description = "What is to be shown: a walk of the book, a system, a card, 'all', or 'changes' of a road number.",
        DefaultValueFactory = _ => RouteRequest.Whole,
    };

    public IEnumerable<Option> All => [_train, _from, _to, _closed, _role, _pace];

    /// <summary>What is wanted, within the bounds that the call names; null after saying what is wrong.</summary>
    /// <param name="line">The call.</param>
    /// <param name="book">With the items of the road number that it names.</param>
    public (RouteRequest Request, ClassBook Book)? Read(ParseResult line, ClassBook book)
    {
        TextWriter error = line.InvocationConfiguration.Error;
        if (line.GetValue(_train) is { } train)
        {
            if (!book.Trains.ContainsKey(train))
            {
                error.WriteLine(Unknown("train", train, book.Trains.Keys));
                return null;
            }

            book = book.Coupled(train);
        }

        if (PurposeFinder.Find(line.GetValue(Purpose)!, book, error) is not var (asked, spoken))
        {
            return null;
        }

        RouteRequest request = asked with
        {
            From = line.GetValue(_from) ?? asked.From,
            To = line.GetValue(_to) ?? asked.To,
            Role = line.GetValue(_role) ?? asked.Role,
            Closed = [.. asked.Closed, .. (line.GetValue(_closed) ?? []).SelectMany(p => RouteSides.PlacesOf(spoken, p) is var side && side.Any() ? side : [p])],
            Pace = line.GetValue(_pace) is { } typed ? PaceOf(typed) : RouteRequest.OrdinaryPace,
        };
        if (Wrong(request, spoken) is { } wrong)
        {
            error.WriteLine(request.Pace > 0 ? wrong : $"`{line.GetValue(_pace)}` is no pace: write a speed such as `1.0 m/s`");
            return null;
        }

        return (request, spoken);
    }

    /// <summary>Says that a name is not the book's, and what would be.</summary>
    public static string Unknown(string what, string named, IEnumerable<string> known) =>
        $"The book has no {what} `{named}`; {Nearest.DidYouMean(named, known) ?? $"it has {string.Join(", ", known.Order(StringComparer.Ordinal).Take(12).Select(n => $"`{n}`"))}"}";

    private static string? Wrong(RouteRequest request, ClassBook book)
    {
        string? place = request.Closed.Append(request.From).Append(request.To).OfType<string>().FirstOrDefault(p => !book.Places.ContainsKey(p));
        return place is not null ? Unknown("place", place, book.Places.Keys.Concat(RouteSides.Names))
            : request.Role is { } role && !book.Roles.ContainsKey(role) ? Unknown("role", role, book.Roles.Keys)
            : request.Pace > 0 ? null : "";
    }

    private static double PaceOf(string text) =>
        QuantityText.TryParse(text, new SourceText("pace", text).Between(0, text.Length), Dimension.Speed, [], out Quantity pace) ? pace.Si : 0;
}
