using System.CommandLine;
using Sightglass.Basics.Diagnostics;
using Sightglass.Basics.Language;
using Sightglass.Book.Model;
using Sightglass.Cli.Books;
using Sightglass.Cli.Output;
using Sightglass.Drawing.Svg;
using Sightglass.Paper.Papers;
using Sightglass.World.Hauls;

namespace Sightglass.Cli.Verbs;

/// <summary><c>haul</c>: a train of the book over a route of the book.</summary>
internal sealed class HaulVerb : BookVerb
{
    private readonly Argument<string?> _route = new("ROUTE") { Description = "A route of the book. Default: all of them are listed.", Arity = ArgumentArity.ZeroOrOne };
    private readonly Option<string?> _train = new("--train") { Description = "A train of the book. Default: the machine alone.", HelpName = "TRAIN" };
    private readonly Option<string?> _rail = new("--rail") { Description = "How the rail is: one of the route's. Default: its first.", HelpName = "RAIL" };
    private readonly Option<bool> _noSand = new("--no-sand") { Description = "It does not sand where the rail does not hold its effort." };
    private readonly Option<string[]> _dead = new("--dead") { Description = "A machine that does not work, counted from the head: 2. Its brakes work and its weight is hauled.", HelpName = "N", DefaultValueFactory = _ => [] };
    private readonly Option<string?> _headEnd = new("--head-end") { Description = "What the cars take: a power such as \"240 kW\", or off. Default: their loads by the book.", HelpName = "POWER" };
    private readonly Option<string?> _fuel = new("--fuel") { Description = "How full every compartment is at the start: \"70 %\". Default: as the class is built.", HelpName = "SHARE" };
    private readonly Option<string[]> _set = new("--set") { Description = "What is otherwise at the start, in each machine that works: \"aft supply valve = closed\", \"fill of aft compartment = 20 %\".", HelpName = "NAME = VALUE", DefaultValueFactory = _ => [] };
    private readonly Option<string?> _margin = new("--margin") { Description = "Share of the fuel at the start that is kept back. Default: 20 %.", HelpName = "SHARE" };
    private readonly Option<string[]> _stop = new("--stop-at") { Description = "Where it is stopped on trial, by emergency and by full service: a milepost such as \"12 mi\", or a place.", HelpName = "PLACE", DefaultValueFactory = _ => [] };
    private readonly Option<string?> _plot = OutputFile.Option("--plot", "Draw height, speed and fuel along the route into this SVG file.");
    private readonly Option<Theme> _theme = new("--theme") { Description = "Light in which the plot is shown.", DefaultValueFactory = _ => Theme.Reader };

    public HaulVerb()
        : base("haul", "Run a train of the book over a route of the book: time, fuel by compartment, how far it gets with a margin, what decides the climb, and where it stops by the living air of the train.")
    {
        Add(_route);
        Add(BookOption);
        Add(RoadNumber);
        foreach (Option option in new Option[] { _train, _rail, _noSand, _dead, _headEnd, _fuel, _set, _margin, _stop, _plot, _theme })
        {
            Add(option);
        }
    }

    public override IReadOnlyList<(string Call, string Says)> Examples =>
    [
        ("haul", "the routes of the book"),
        ("haul \"Saltmarsh to Windlass\" --train \"local train\" --fuel \"60 %\" --stop-at \"12 mi\"", "a train over it, and where an emergency at milepost 12 ends"),
        ("haul \"Saltmarsh to Windlass\" --train \"double-headed express\" --dead 2 --rail wet", "with the second machine dead on a wet rail"),
        ("haul \"Saltmarsh to Windlass\" --fuel \"8 %\" --set \"aft supply valve = closed\" --plot haul.svg", "the machine alone, low on fuel and one compartment shut off, drawn"),
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

        if (line.GetValue(_route) is not { } name)
        {
            Write(line, () => Answer.Write(line.InvocationConfiguration.Output, HaulListAnswer.Of(book)), () => HaulText.List(line.InvocationConfiguration.Output, book));
            return Task.FromResult(ExitCode.Good);
        }

        if (!book.Routes.TryGetValue(name, out Route? route))
        {
            return WrongUse(line, $"The book has no route `{name}`; {Nearest.DidYouMean(name, book.Routes.Keys) ?? (book.Routes.IsEmpty ? "it has none: see `routes` in docs/book.md" : $"it has: {string.Join("; ", book.Routes.Keys)}")}");
        }

        List<HaulRefusal> refused = [];
        HaulRequest request = new HaulReader(Typed(line), refused).Read(route, !line.GetValue(_noSand));
        if (refused.Count > 0 || Haul.Of(inspection.Fleet, request, refused) is not { } run)
        {
            return Refuse(line, refused);
        }

        if (line.GetValue(_plot) is { } plot)
        {
            OutputFile.Write(plot, HaulPicture.Along(run, SvgOptions.Alone with { Theme = line.GetValue(_theme) }));
        }

        Write(line, () => Answer.Write(line.InvocationConfiguration.Output, HaulAnswer.Of(run)), () => HaulText.Print(line.InvocationConfiguration.Output, run));
        return Task.FromResult(HaulAnswer.IsGood(run) ? ExitCode.Good : ExitCode.No);
    }

    private Dictionary<HaulInput, string> Typed(ParseResult line) => new()
    {
        [HaulInput.Train] = line.GetValue(_train) ?? "",
        [HaulInput.RoadNumber] = line.GetValue(RoadNumber) ?? "",
        [HaulInput.Rail] = line.GetValue(_rail) ?? "",
        [HaulInput.Dead] = string.Join(';', line.GetValue(_dead)!),
        [HaulInput.HeadEnd] = line.GetValue(_headEnd) ?? "",
        [HaulInput.Fill] = line.GetValue(_fuel) ?? "",
        [HaulInput.Sets] = string.Join(';', line.GetValue(_set)!),
        [HaulInput.Margin] = line.GetValue(_margin) ?? "",
        [HaulInput.StopsAt] = string.Join(';', line.GetValue(_stop)!),
    };

    private static Task<int> Refuse(ParseResult line, List<HaulRefusal> refused)
    {
        foreach (HaulRefusal r in refused)
        {
            line.InvocationConfiguration.Error.WriteLine(r.Sentence);
        }

        return Task.FromResult(refused.All(r => r.Input is null) ? ExitCode.No : ExitCode.WrongUse);
    }

    private void Write(ParseResult line, Action json, Action text)
    {
        if (!line.GetValue(Json))
        {
            text();
            return;
        }

        // Keys and names of an answer in JSON are the same in every language.
        using (Tongue.English.Speak())
        {
            json();
        }
    }
}
