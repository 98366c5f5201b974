using System.Collections.Immutable;
using System.CommandLine;
using Sightglass.Basics.Diagnostics;
using Sightglass.Basics.Time;
using Sightglass.Book.Model;
using Sightglass.Cli.Books;
using Sightglass.Cli.Output;
using Sightglass.Plant.Plans;
using Sightglass.Trials.Failures;

namespace Sightglass.Cli.Verbs;

/// <summary><c>fails</c>: what happens if an item fails.</summary>
internal sealed class FailsVerb : BookVerb
{
    private readonly Argument<string?> _item = new("ITEM") { Description = "An item of the book. Default: all that people meet, one line each.", Arity = ArgumentArity.ZeroOrOne };
    private readonly Option<string?> _in = new("--in") { Description = "The situation in which it fails. Default: that in which the book says the machine is in service.", HelpName = "SITUATION" };
    private readonly Option<string> _for = new("--for") { Description = "How long it has been failed.", HelpName = "TIME", DefaultValueFactory = _ => "5 min" };

    public FailsVerb()
        : base("fails", "What happens if an item fails: the machine in service is run with each of its faults and without, and what is otherwise is told.")
    {
        Add(_item);
        Add(BookOption);
        Add(RoadNumber);
        Add(_in);
        Add(_for);
    }

    public override IReadOnlyList<(string Call, string Says)> Examples =>
    [
        ("fails \"load contactor\"", "what shows when its coil breaks"),
        ("fails \"front brake pipe hose\" --for 1min", "shortly after it has burst"),
        ("fails --in \"machine that loads\" --for 10s", "every item that people meet on the machine alone: what can fail, and whether anybody notices at once"),
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

        DiagnosticList wrong = [];
        if (RunVerb.Time(line.GetValue(_for), wrong) is not { } time || wrong.HasErrors)
        {
            return WrongUse(line, $"--for is a time such as 30 s or 5 min, not `{line.GetValue(_for)}`");
        }

        if ((line.GetValue(_in) ?? book.InService) is not { } name)
        {
            return WrongUse(line, "The book does not say in which situation the machine is in service: name one with --in, or write `in service: SITUATION` in the book.");
        }

        if (!book.Situations.TryGetValue(name, out Situation? situation))
        {
            return WrongUse(line, $"The book has no situation `{name}`; {Nearest.DidYouMean(name, book.Situations.Keys) ?? $"it has: {string.Join("; ", book.Situations.Keys)}"}");
        }

        return HasRoadNumber(line, inspection, line.GetValue(RoadNumber)) ? Fail(line, inspection.Fleet.For(line.GetValue(RoadNumber), situation.Train)!, situation, time, stop) : Task.FromResult(ExitCode.WrongUse);
    }

    private Task<int> Fail(ParseResult line, Plan plan, Situation situation, SimTime time, CancellationToken stop)
    {
        Item[] items;
        if (line.GetValue(_item) is { } name)
        {
            if (!plan.Book.Items.TryGetValue(name, out Item? item))
            {
                return WrongUse(line, $"The book has no item `{name}`; {Nearest.DidYouMean(name, plan.Book.Items.Keys) ?? "see 'walk' for them"}");
            }

            items = [item];
        }
        else
        {
            items = [.. plan.Book.ItemsInOrder.Where(i => !i.Places.IsEmpty)];
        }

        Dictionary<string, ImmutableArray<Failure>> failures = FailureRun.Of(plan, situation, items, time, stop).GroupBy(f => f.Item.Name).ToDictionary(g => g.Key, g => g.ToImmutableArray(), StringComparer.Ordinal);
        FailsAnswer answer = FailsAnswer.Of(situation, time, items, failures);
        if (line.GetValue(Json))
        {
            Answer.Write(line.InvocationConfiguration.Output, answer);
        }
        else
        {
            FailsText.Print(line.InvocationConfiguration.Output, plan.Book, answer, whole: line.GetValue(_item) is not null);
        }

        return Task.FromResult(ExitCode.Good);
    }
}
