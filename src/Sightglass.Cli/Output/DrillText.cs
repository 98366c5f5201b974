using Sightglass.Basics.Language;
using Sightglass.Basics.Quantities;
using Sightglass.Basics.Time;
using Sightglass.Book.Model;
using Sightglass.Training.Drills;
using Sightglass.Training.Evaluation;
using Sightglass.World.Journal;

namespace Sightglass.Cli.Output;

/// <summary>Drills and what came of them as text.</summary>
internal static class DrillText
{
    public static void PrintAll(TextWriter output, ClassBook book, bool json)
    {
        Drill[] drills = [.. book.Drills.Values.OrderBy(d => d.Span)];
        if (json)
        {
            Answer.Write(output, new DrillListAnswer(book.Title, book.Notice, [.. drills.Select(DrillListAnswer.RowOf)]));
            return;
        }

        BookList.Head(output, book, drills.Length, "drill", "Describe them under `drills:`.");
        foreach (IGrouping<DrillLevel, Drill> level in drills.GroupBy(d => d.Level).OrderBy(g => g.Key))
        {
            output.WriteLine();
            output.WriteLine($"For {DrillWords.Level(level.Key)}");
            foreach (Drill drill in level)
            {
                output.WriteLine();
                WalkText.Wrap(output, " ", Say.Book(drill.Name).ToUpperInvariant());
                WalkText.Wrap(output, "   ", $"{Say.Book(drill.Aim)} ({Say.Book(drill.Role)}, {Time(drill.TimeLimit)}{(drill.IsQualifying ? ", qualifying" : "")})");
            }
        }
    }

    /// <summary>What is read out before it begins.</summary>
    public static void PrintBrief(TextWriter output, ClassBook book, Drill drill, bool json)
    {
        if (json)
        {
            Answer.Write(output, new DrillListAnswer(book.Title, book.Notice, [DrillListAnswer.RowOf(drill)]));
            return;
        }

        WalkText.Wrap(output, "", Say.Book(book.Notice));
        output.WriteLine();
        WalkText.Wrap(output, "", Say.Book(drill.Aim));
        output.WriteLine();
        Line("You are", Say.Book(drill.Role));
        Line("It counts as", drill.IsQualifying ? "qualifying: a hint taken is no pass" : "practice");
        Line("Time", $"{Time(drill.TimeLimit)} in all");
        Line("In hand", drill.Tools.IsEmpty ? "nothing" : Say.Names(drill.Tools));
        Line("Cards", drill.WithCards ? "yes" : "none");
        Line("Stop word", drill.StopWord.Length > 0 ? $"{Say.Book(drill.StopWord)}: whoever says it, everything stops" : "none is agreed: agree on one");
        foreach (string unreal in drill.NotReal)
        {
            Line("Not real", Say.Book(unreal));
        }

        output.WriteLine();
        WalkText.Wrap(output, "", "Nothing here replaces local rules, the maker's manuals and qualified people.");

        void Line(string head, string says) => WalkText.Wrap(output, $"  {head,-13} ", says);
    }

    public static void Print(TextWriter output, BoundDrill drill, DrillResult result)
    {
        WalkText.Wrap(output, "", Say.Book(drill.Plan.Book.Notice));
        output.WriteLine();
        WalkText.Wrap(output, "", $"{Say.Begin(Say.Book(drill.Drill.Name))}: {Say.Book(drill.Drill.Aim)}");
        output.WriteLine();
        foreach (JournalEntry entry in result.Journal)
        {
            output.WriteLine(StoryLine.Text(entry));
        }

        output.WriteLine();
        EvaluationSheet sheet = result.Sheet;
        foreach (IGrouping<EvaluationLayer, EvaluationLine> layer in sheet.Lines.GroupBy(l => l.Layer))
        {
            output.WriteLine(DrillWords.Layer(layer.Key));
            foreach (EvaluationLine line in layer)
            {
                string points = line.Worth == 0 ? "" : line.Worth < 0 ? $" ({Number(line.Worth)})" : $" ({(line.IsMet ? Number(line.Worth) : "0")} of {Number(line.Worth)})";
                WalkText.Wrap(output, line.IsMet ? "  met      " : line.IsCritical ? "  NOT MET  " : "  not met  ", $"{line.Said}{points}");
                WalkText.Wrap(output, "             ", line.Shown);
                WalkText.Wrap(output, "             ", line.IsMet ? "" : Say.Book(line.Because));
            }
        }

        output.WriteLine();
        WalkText.Wrap(output, "", result.Trouble is { } trouble ? $"Undecided: {trouble}." : Verdict(sheet));
        foreach (Question question in drill.Drill.Asks)
        {
            WalkText.Wrap(output, "  ? ", Say.Book(question.Asked));
        }
    }

    public static void Print(TextWriter output, Drill drill, DrillCheckResult result)
    {
        WalkText.Wrap(output, result.IsGood ? "good  " : "BAD   ", drill.Name);
        foreach (DrillSolution solution in result.Solutions)
        {
            WalkText.Wrap(output, "        ", $"{solution.Card}: passes {solution.Passed} of {result.Cases}");
        }

        if (!result.Unsolved.IsEmpty)
        {
            WalkText.Wrap(output, "        ", $"no card passes case {string.Join(", ", result.Unsolved)}");
        }

        if (!result.Idle.IsEmpty)
        {
            WalkText.Wrap(output, "        ", $"passed although nobody does anything: case {string.Join(", ", result.Idle)}");
        }

        foreach (DrillShortcut shortcut in result.Shortcuts)
        {
            WalkText.Wrap(output, "        ", $"passed without step {shortcut.Step} of {shortcut.Card}: {shortcut.Text}");
        }
    }

    public static string Verdict(EvaluationSheet sheet)
    {
        string points = $"{Number(sheet.Points)} of {Number(sheet.MostPoints)} points, {Number(sheet.NeededPoints)} needed";
        return sheet.IsPassed ? $"Passed: {points}."
            : sheet.Failures.FirstOrDefault() is { } first ? $"Not passed: {points}. What decided it: {first.Said}. {first.Shown}"
            : $"Not passed: {points}.";
    }

    private static string Number(double points) => points.ToString("0.##", System.Globalization.CultureInfo.InvariantCulture);

    private static string Time(double seconds) => QuantityFormat.Text(seconds, UnitTable.Get(seconds < 120 ? "s" : seconds < 7200 ? "min" : "h"));
}
