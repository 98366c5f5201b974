using Sightglass.Basics.Language;
using Sightglass.Book.Model;
using Sightglass.Paper.Papers;
using Sightglass.Trials.Consists;

namespace Sightglass.Cli.Output;

/// <summary>A train that was checked, to read in a terminal.</summary>
internal static class TrainText
{
    /// <summary>The trains of a book.</summary>
    public static void List(TextWriter output, ClassBook book, bool json)
    {
        if (json)
        {
            Answer.Write(output, TrainListAnswer.Of(book));
            return;
        }

        output.WriteLine(book.Trains.IsEmpty ? "The book lists no trains; write a file of your own: docs/guide/a-train.md." : "Trains of the book:");
        foreach (Train train in book.Trains.Values.OrderBy(t => t.Span))
        {
            WalkText.Wrap(output, $"  {train.Name}: ", Say.Book(train.Text));
        }
    }

    public static void Print(TextWriter output, TrainCheckResult result)
    {
        output.WriteLine(Say.Begin(Say.Book(result.Consist.Title)));
        Line(output, "", PaperWords.Notice(result.Book));
        output.WriteLine();
        Line(output, "", $"{TrainWords.Verdict(result.Verdict)} {TrainWords.Because(result)}");
        foreach (TrainFinding finding in result.Findings)
        {
            Line(output, $"  {TrainWords.Weight(finding.Weight)}: ", finding.Says());
        }

        output.WriteLine();
        for (int i = 0; i < result.Vehicles.Length; i++)
        {
            Vehicle(output, result, i);
        }

        Order(output, result);
        output.WriteLine();
        output.WriteLine(Say.It("Its numbers"));
        foreach ((string name, string value, string says) in TrainNumbers.Of(result))
        {
            Line(output, $"  {name}: ", $"{value} {says}".TrimEnd());
        }

        Line(output, "  ", TrainNumbers.Sources(result));

        Commands(output, result);
        output.WriteLine();
        Line(output, "", TrainPaper.StandsIn);
    }

    private static void Vehicle(TextWriter output, TrainCheckResult result, int at)
    {
        CheckedVehicle vehicle = result.Vehicles[at];
        string lead = at == result.Lead && result.Vehicles.Count(v => v.IsMachine) > 1 ? $" ({Say.It("leads")})" : "";
        string[] values = [.. TrainMaps.Of(result).Rows.Where(r => r.Values[at].Value.Length > 0).Select(r => $"{r.Label} {r.Values[at].Value}")];
        Line(output, $"{at + 1,3}. ", $"{Say.Begin(TrainWords.Name(vehicle))}{lead}: {TrainWords.Kind(vehicle, result.Book)}. {string.Join("; ", values)}");
        if (at < result.Joints.Length)
        {
            foreach (IGrouping<LineState, JointLine> state in result.Joints[at].Lines.GroupBy(l => l.State))
            {
                Line(output, "       ", $"{TrainWords.State(state.First())}: {Say.Names(state.Select(l => l.Line))}");
            }
        }
    }

    private static void Order(TextWriter output, TrainCheckResult result)
    {
        if (result.Order.IsEmpty)
        {
            return;
        }

        output.WriteLine();
        output.WriteLine(Say.It("To couple, in this order"));
        Line(output, "  ", Say.Book(result.Book.MakingUp?.Text ?? ""));
        foreach ((string what, CouplingStep step) in TrainPaper.Together(result))
        {
            string[] parts = [TrainPaper.Places(result, step.Joints), TrainPaper.By(step.Coupling.Authority), TrainPaper.Protections(step)];
            Line(output, "  ", $"{what}: {string.Join("; ", parts.Where(p => p.Length > 0))}.");
            if (step.Gravest is { } gravest)
            {
                Line(output, $"     {Say.Word(gravest.Caution.Word.ToString()).ToUpperInvariant()}: ", Say.Book(gravest.Caution.Text));
            }
        }

        Line(output, "  ", TrainPaper.Mistaken(result));
    }

    private static void Commands(TextWriter output, TrainCheckResult result)
    {
        if (result.Commands.IsEmpty)
        {
            return;
        }

        output.WriteLine();
        output.WriteLine(Say.It("Which machine answers the leading cab"));
        foreach ((int unit, _) in result.Commands[0].Units)
        {
            Line(output, "  ", $"{Say.Begin(TrainWords.Name(result.Vehicles[unit]))} {TrainPaper.Answers(result, unit)}");
        }
    }

    private static void Line(TextWriter output, string before, string text) => WalkText.Wrap(output, CalcText.Plain(before), CalcText.Plain(text));
}
