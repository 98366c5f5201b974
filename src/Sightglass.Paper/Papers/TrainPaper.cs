using System.Collections.Immutable;
using Sightglass.Basics.Language;
using Sightglass.Book.Model;
using Sightglass.Drawing.Trains;
using Sightglass.Paper.Document;
using Sightglass.Trials.Consists;

namespace Sightglass.Paper.Papers;

/// <summary>A train that was checked, on one sheet: what it comes to and why, the train with its lines, the order of coupling, its numbers, and which machine answers.</summary>
public static class TrainPaper
{
    /// <summary>What it is made from, and who decides.</summary>
    public static string StandsIn => Say.It("Worked out from the book and its models, with everything charged and set up as the book says; nobody has looked at this train. It stands in for no inspection and no brake test. Local rules, the maker's manual and qualified people decide.");

    /// <param name="result">What was found.</param>
    public static PaperDocument Of(TrainCheckResult result)
    {
        ArgumentNullException.ThrowIfNull(result);
        string title = Say.With($"Train check: {PaperWords.Named(result.Consist.Title)}");
        List<PaperBlock> blocks =
        [
            new PaperBlock.Heading(1, title),
            new PaperBlock.Paragraph(PaperText.Strong(TrainWords.Verdict(result.Verdict) + " ").And(TrainWords.Because(result)), ParagraphSort.Lead),
        ];
        if (!result.Findings.IsEmpty)
        {
            blocks.Add(new PaperBlock.Bullets([.. result.Findings.Select(f => PaperText.Strong(TrainWords.Weight(f.Weight) + ". ").And(f.Says()))]));
        }

        blocks.Add(new PaperBlock.Picture(TrainMapDrawing.Render(TrainMaps.Of(result)), TrainMaps.Told(result)) { MostHeight = 0.4 });
        blocks.AddRange(OrderAndNumbers(result));
        blocks.AddRange(Answers(result));
        blocks.Add(new PaperBlock.Paragraph(StandsIn, ParagraphSort.Small));
        return new PaperDocument(title, PaperLook.Dense, [.. blocks]) { Style = "train", Machine = PaperWords.Machine(result.Book), Notice = PaperWords.Notice(result.Book) };
    }

    /// <summary>Steps that follow each other and are done at the same places, by the same people, under the same protection.</summary>
    public static IEnumerable<(string What, CouplingStep First)> Together(TrainCheckResult result)
    {
        ArgumentNullException.ThrowIfNull(result);
        for (int i = 0, next; i < result.Order.Length; i = next)
        {
            CouplingStep first = result.Order[i];
            next = i + 1;
            while (next < result.Order.Length && Alike(result, first, result.Order[next]))
            {
                next++;
            }

            string numbers = next - i == 1 ? PaperWords.Number(i + 1) : $"{PaperWords.Number(i + 1)}–{PaperWords.Number(next)}";
            yield return ($"{numbers}. {Say.Begin(Say.List(result.Order[i..next].Select(s => s.Line)))}", first);
        }
    }

    /// <summary>Whose hoses can be taken for each other; empty for none.</summary>
    public static string Mistaken(TrainCheckResult result)
    {
        ArgumentNullException.ThrowIfNull(result);
        string[] pairs = [.. result.Mistaken.Select(m => Say.List([m.Line, m.Other]))];
        return pairs.Length == 0 ? "" : Say.With($"Hoses that can be taken for each other: {string.Join("; ", pairs)}. Read what each is before you join it.");
    }

    /// <summary>Behind which vehicles something is coupled.</summary>
    public static string Places(TrainCheckResult result, ImmutableArray<int> joints)
    {
        ArgumentNullException.ThrowIfNull(result);
        return joints.Length == result.Joints.Length && joints.Length > 1 ? Say.It("every vehicle but the last") : Say.List(joints.Select(j => TrainWords.Name(result.Vehicles[j])));
    }

    /// <summary>Who handles it, on whose permission, and who is told.</summary>
    public static string By(Authority? authority) => authority switch
    {
        null => "",
        { Permission: { } permission } => Say.With($"{Either(authority.Who)}, on permission of {permission}"),
        { Told.IsEmpty: false } => Say.With($"{Either(authority.Who)}; {Say.List(authority.Told)} is told"),
        _ => Either(authority.Who),
    };

    private static string Either(IEnumerable<string> who) => Say.Names(who, Say.It(" or "));

    /// <summary>Which protection is needed.</summary>
    public static string Protections(CouplingStep step)
    {
        ArgumentNullException.ThrowIfNull(step);
        return step.Protections.IsEmpty ? Say.It("none by the book") : string.Join("; ", step.Protections.Select(p => p.AskedOf.Length > 0 ? Say.With($"{p.Name} (asked of {p.AskedOf})") : Say.Book(p.Name)));
    }

    /// <summary>What a machine answers and what it does not, as a sentence.</summary>
    public static string Answers(TrainCheckResult result, int unit)
    {
        ArgumentNullException.ThrowIfNull(result);
        string[] yes = [.. result.Commands.Where(c => c.AnsweredBy(unit)).Select(c => c.Command.Name)], no = [.. result.Commands.Where(c => !c.AnsweredBy(unit)).Select(c => c.Command.Name)];
        return (yes, no) switch
        {
            (_, []) => Say.With($"answers {Say.List(yes)}."),
            ([], _) when result.Vehicles[unit].Listed.IsDead => Say.It("is hauled dead and answers nothing."),
            ([], _) => Say.It("answers nothing."),
            _ => Say.With($"answers {Say.List(yes)}; it does not answer {Say.List(no)}."),
        };
    }

    private static bool Alike(TrainCheckResult result, CouplingStep one, CouplingStep other) =>
        one.Joints.SequenceEqual(other.Joints) && By(one.Coupling.Authority) == By(other.Coupling.Authority) && Protections(one) == Protections(other) && Places(result, one.Joints) == Places(result, other.Joints);

    /// <summary>What to couple and what it comes to beside each other; below them what is dangerous, and where the numbers come from.</summary>
    private static IEnumerable<PaperBlock> OrderAndNumbers(TrainCheckResult result)
    {
        yield return new PaperBlock.Columns([.. Order(result)], [new PaperBlock.Heading(2, Say.It("Its numbers")), Table(TrainNumbers.Of(result))]);
        foreach (string note in new[] { Mistaken(result), TrainNumbers.Sources(result) }.Where(n => n.Length > 0))
        {
            yield return new PaperBlock.Paragraph(note, ParagraphSort.Small);
        }

        PaperBlock[] notices = [.. Cautions(result)];
        int left = (notices.Length + 1) / 2;
        if (left > 0)
        {
            yield return new PaperBlock.Columns([.. notices[..left]], [.. notices[left..]]);
        }
    }

    private static IEnumerable<PaperBlock> Order(TrainCheckResult result)
    {
        yield return new PaperBlock.Heading(2, Say.It("To couple, in this order"));
        if (result.Book.MakingUp is { Text.Length: > 0 } made)
        {
            yield return new PaperBlock.Paragraph(Say.Book(made.Text), ParagraphSort.Small);
        }

        yield return new PaperBlock.Table(
            [Say.It("What"), Say.It("Done by"), Say.It("Protection")],
            [.. Together(result).Select(s => ImmutableArray.Create<PaperText>(What(result, s.What, s.First), By(s.First.Coupling.Authority), Protections(s.First)))])
        { Widths = [3, 2.6, 2.6], RowHeads = true };
    }

    /// <summary>A line, and where it is coupled when that is not everywhere.</summary>
    private static string What(TrainCheckResult result, string lines, CouplingStep step) =>
        step.Joints.Length == result.Joints.Length ? lines : Say.With($"{lines}, behind {Places(result, step.Joints)}");

    /// <summary>What is gravest at each line, once for the lines of which it is the same.</summary>
    private static IEnumerable<PaperBlock> Cautions(TrainCheckResult result) =>
        result.Order.Where(s => s.Gravest is not null).GroupBy(s => s.Gravest!.Caution.Text).OrderByDescending(g => g.First().Gravest!.Caution.Word)
            .Select(g => new PaperBlock.Notice(g.First().Gravest!.Caution.Word, PaperText.Strong(Say.Begin(Say.List(g.Select(s => s.Line))) + ". ").And(Say.Book(g.Key))));

    private static PaperBlock.Table Table(IEnumerable<(string Name, string Value, string Says)> rows) =>
        new([Say.It("What"), Say.It("How much")], [.. rows.Select(r => ImmutableArray.Create<PaperText>(r.Name, PaperText.Strong(r.Value).And(r.Says.Length > 0 ? " " + r.Says : "")))]) { Widths = [1.7, 3], RowHeads = true };

    private static IEnumerable<PaperBlock> Answers(TrainCheckResult result)
    {
        if (result.Commands.IsEmpty)
        {
            yield break;
        }

        yield return new PaperBlock.Heading(2, Say.It("Which machine answers the leading cab"));
        yield return new PaperBlock.Bullets([.. result.Commands[0].Units.Select(u => PaperText.Strong(Say.Begin(TrainWords.Name(result.Vehicles[u.Vehicle])) + " ").And(Answers(result, u.Vehicle)))]);
    }
}
