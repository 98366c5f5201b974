using System.CommandLine;
using Sightglass.Book.Changes;
using Sightglass.Book.Model;
using Sightglass.Cli.Books;
using Sightglass.Cli.Data;
using Sightglass.Cli.Output;
using Sightglass.Storage.Proposals;
using Sightglass.Training.Proposals;

namespace Sightglass.Cli.Verbs;

/// <summary><c>proposals</c>: changes to the book that somebody proposes, accepted one by one.</summary>
internal sealed class ProposalsVerb : BookVerb
{
    private readonly Argument<string> _act = new("ACT") { Description = "list, all, show, accept or refuse.", DefaultValueFactory = _ => "list" };
    private readonly Argument<int?> _number = new("N") { Description = "Which one: its number in the list.", Arity = ArgumentArity.ZeroOrOne };
    private readonly Option<string?> _why = new("--why") { Description = "Why it is refused.", HelpName = "TEXT" };
    private readonly Option<string?> _text = new("--text") { Description = "With accept or show: what the book is to say instead of what is proposed; proved as that would be.", HelpName = "TEXT" };
    private readonly Option<string?> _by = new("--by") { Description = "Who decides. Default: the name under which you are signed in on this computer.", HelpName = "NAME" };
    private readonly Option<string?> _data = DataOption.Create();

    public ProposalsVerb()
        : base("proposals", "Changes to the book that a walk-down or a question proposes: each with its diff, accepted or refused one by one.")
    {
        _act.AcceptOnlyFromAmong("list", "all", "show", "accept", "refuse");
        Add(_act);
        Add(_number);
        Add(_why);
        Add(_text);
        Add(_by);
        Add(BookOption);
        Add(_data);
    }

    public override IReadOnlyList<(string Call, string Says)> Examples =>
    [
        ("proposals", "those that are open"),
        ("proposals show 3", "what number 3 would change in which file"),
        ("proposals accept 3", "it goes into the book"),
        ("proposals accept 3 --text \"Supply, aft\"", "in other words"),
        ("proposals refuse 4 --why \"Painted over; the plate below is right.\"", "it does not, and the reason is kept"),
    ];

    protected override Task<int> RunAsync(ParseResult line, CancellationToken stop)
    {
        string act = line.GetValue(_act)!;
        int? number = line.GetValue(_number);
        if (act is not ("list" or "all") && number is null)
        {
            return WrongUse(line, $"Say which: 'proposals {act} N', with a number of the list.");
        }

        if (act == "refuse" && string.IsNullOrWhiteSpace(line.GetValue(_why)))
        {
            return WrongUse(line, "Say why, so that nobody proposes it again: --why TEXT.");
        }

        if (line.GetValue(_text) is not null && act is not ("accept" or "show"))
        {
            return WrongUse(line, "--text goes with accept, or with show to see what it would change.");
        }

        return Open(line, out int exit) is { } book
            ? Task.FromResult(DataOption.With(line, _data, FolderOf(line), data => Do(line, book, new(data, FolderOf(line), TimeProvider.System), act, number)))
            : Task.FromResult(exit);
    }

    private int Do(ParseResult line, ClassBook book, ProposalDesk desk, string act, int? number)
    {
        IReadOnlyList<Proposal> all = desk.All();
        Proposal? one = all.FirstOrDefault(p => p.Number == number);
        if (number is { } n && one is null)
        {
            line.InvocationConfiguration.Error.WriteLine(all.Count == 0 ? "There are no proposals." : $"There is no proposal {n}: they go from {all[0].Number} to {all[^1].Number}.");
            return ExitCode.WrongUse;
        }

        string? why = act switch
        {
            "accept" => desk.Accept(one!.Id, line.GetValue(_by) ?? Environment.UserName, line.GetValue(_text)),
            "refuse" => desk.Refuse(one!.Id, line.GetValue(_by) ?? Environment.UserName, line.GetValue(_why)!.Trim()),
            _ => null,
        };
        if (why is not null)
        {
            line.InvocationConfiguration.Error.WriteLine($"Proposal {number}: {why}");
            return ExitCode.No;
        }

        all = desk.All();
        ProposalsAnswer answer = new(book.Title, [.. all
            .Where(p => number is { } asked ? p.Number == asked : act == "all" || p.State == ProposalState.Open)
            .Select(p => Row(p, act == "show" ? desk.Look(p, line.GetValue(_text)) : null))]);
        if (line.GetValue(Json))
        {
            Answer.Write(line.InvocationConfiguration.Output, answer);
        }
        else
        {
            ProposalsText.Print(line.InvocationConfiguration.Output, answer, act);
        }

        return ExitCode.Good;
    }

    private static ProposalsAnswer.Row Row(Proposal p, ChangePlan? plan) => new(
        p.Number, p.Target, p.RoadNumber, p.Property, p.Was, p.Becomes, p.Edited, p.Why, p.By, p.At, p.State.ToString().ToLowerInvariant(), p.DecidedBy, p.DecidedWhy, plan?.File?.Diff, plan?.Refused);
}
