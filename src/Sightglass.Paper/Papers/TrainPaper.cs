using System.Collections.Immutable;
using Sightglass.Basics.Language;
using Sightglass.Book.Model;
using Sightglass.Drawing.Trains;
using Sightglass.Paper.Document;
using Sightglass.Training.Lessons;
using Sightglass.Trials.Consists;

namespace Sightglass.Paper.Papers;

/// <summary>A train that was checked, on one sheet: what it comes to and why, the train with its lines, the order of coupling, and its numbers.</summary>
public static class TrainPaper
{
    /// <summary>What it is made from, and who decides.</summary>
    public static string StandsIn => Say.It("Worked out from the book and its models, with everything charged and set up as the book says; nobody has looked at this train. It stands in for no inspection and no brake test. Local rules, the maker's manual and qualified people decide.");

    /// <param name="result">What was found.</param>
    public static PaperDocument Of(TrainCheckResult result)
    {
        ArgumentNullException.ThrowIfNull(result);
        string title = PaperWords.Named(result.Consist.Title);
        List<PaperBlock> blocks =
        [
            new PaperBlock.Paragraph(Say.It("Train check"), ParagraphSort.Eyebrow),
            new PaperBlock.Heading(1, title),
            new PaperBlock.Paragraph(PaperText.Strong(TrainWords.Verdict(result.Verdict) + " ").And(TrainWords.Because(result)), ParagraphSort.Lead),
        ];
        if (!result.Findings.IsEmpty)
        {
            blocks.Add(new PaperBlock.Table([Say.It("What"), Say.It("Why")], [.. result.Findings.Select(f => ImmutableArray.Create<PaperText>(TrainWords.Weight(f.Weight), f.Says()))]) { Widths = [1, 8], RowHeads = true });
        }

        TrainMap map = TrainMaps.Of(result);
        blocks.Add(new PaperBlock.Picture(TrainMapDrawing.Render(map), TrainMaps.Told(result)) { MostHeight = 0.5 });
        blocks.AddRange(Order(result));
        blocks.AddRange(Numbers(result));
        blocks.AddRange(Commands(result));
        blocks.Add(new PaperBlock.Paragraph(StandsIn, ParagraphSort.Small));
        return new PaperDocument(Say.With($"Train check: {title}"), PaperLook.Sheet, [.. blocks]) { Style = "train", Machine = PaperWords.Machine(result.Book), Notice = PaperWords.Notice(result.Book) };
    }

    private static IEnumerable<PaperBlock> Order(TrainCheckResult result)
    {
        if (result.Order.IsEmpty)
        {
            yield break;
        }

        yield return new PaperBlock.Heading(2, Say.It("To couple, in this order"));
        if (result.Book.MakingUp is { Text.Length: > 0 } made)
        {
            yield return new PaperBlock.Paragraph(Say.Book(made.Text));
        }

        yield return new PaperBlock.Table(
            [Say.It("What"), Say.It("Behind"), Say.It("Done by"), Say.It("Protection")],
            [.. result.Order.Select((s, i) => ImmutableArray.Create<PaperText>(Say.With($"{i + 1}. {Say.Begin(Say.Book(s.Line))}"), Places(result, s.Joints), By(s.Coupling.Authority), Protections(s)))])
        { Widths = [2.6, 3, 2.6, 2.6], RowHeads = true };
        foreach (IGrouping<string, CouplingStep> same in result.Order.Where(s => s.Gravest is not null).GroupBy(s => s.Gravest!.Caution.Text).OrderByDescending(g => g.First().Gravest!.Caution.Word))
        {
            Hazard gravest = same.First().Gravest!;
            yield return new PaperBlock.Notice(gravest.Caution.Word, PaperText.Strong(Say.Begin(Say.List(same.Select(s => s.Line))) + ". ").And(Say.Book(gravest.Caution.Text)));
        }
    }

    /// <summary>Behind which vehicles something is coupled.</summary>
    public static string Places(TrainCheckResult result, ImmutableArray<int> joints) =>
        joints.Length == result.Joints.Length && joints.Length > 1 ? Say.It("every vehicle but the last") : Say.List(joints.Select(j => TrainWords.Name(result.Vehicles[j])));

    /// <summary>Who handles it, on whose permission, and who is told.</summary>
    public static string By(Authority? authority) => authority switch
    {
        null => "",
        { Permission: { } permission } => Say.With($"{Either(authority.Who)}, on permission of {permission}"),
        { Told.IsEmpty: false } => Say.With($"{Either(authority.Who)}; {Say.List(authority.Told)} is told"),
        _ => Either(authority.Who),
    };

    private static string Either(ImmutableArray<string> who) => Say.Names(who, " / ");

    /// <summary>Which protection is needed.</summary>
    public static string Protections(CouplingStep step) => step.Protections.IsEmpty ? Say.It("none by the book") : string.Join(", ", step.Protections.Select(p => p.AskedOf.Length > 0 ? Say.With($"{p.Name}, asked of {p.AskedOf}") : Say.Book(p.Name)));

    private static IEnumerable<PaperBlock> Numbers(TrainCheckResult result)
    {
        (string Name, string Value, string Says)[] rows = [.. TrainNumbers.Of(result)];
        if (rows.Length > 0)
        {
            yield return new PaperBlock.Heading(2, Say.It("Its numbers"));
            yield return new PaperBlock.Table([Say.It("What"), Say.It("How much"), Say.It("From what")], [.. rows.Select(r => ImmutableArray.Create<PaperText>(r.Name, r.Value, r.Says))]) { Widths = [2.4, 2.6, 5], RowHeads = true };
        }
    }

    private static IEnumerable<PaperBlock> Commands(TrainCheckResult result)
    {
        if (result.Commands.IsEmpty)
        {
            yield break;
        }

        CheckedVehicle[] units = [.. result.Commands[0].Units.Select(u => result.Vehicles[u.Vehicle])];
        yield return new PaperBlock.Heading(2, Say.It("Which machine answers the leading cab"));
        yield return new PaperBlock.Table(
            [Say.It("Command"), .. units.Select(u => Say.Begin(TrainWords.Name(u)))],
            [.. result.Commands.Select(c => ImmutableArray.CreateRange<PaperText>([Say.Begin(Say.Book(c.Command.Name)), .. c.Units.Select(u => (PaperText)Answer(result, u))]))])
        { RowHeads = true };
    }

    /// <summary>Whether a machine answers a command, in few words.</summary>
    public static string Answer(TrainCheckResult result, (int Vehicle, bool Answers) unit) =>
        unit.Answers ? Say.As("command of a train", "answers") : result.Vehicles[unit.Vehicle].Listed.IsDead ? Say.As("command of a train", "dead") : Say.As("command of a train", "no answer");
}
