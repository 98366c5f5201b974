using Sightglass.Book.Rules;
using Sightglass.Cli.Rules;
using Sightglass.Plant.Rules;

namespace Sightglass.Cli.Output;

/// <summary>Rules held against a book, for a reader at a terminal.</summary>
internal static class RulesText
{
    /// <summary>Every row: first what has a number, then what cannot be told, then what people do.</summary>
    public static void Print(TextWriter output, RuleResult result)
    {
        foreach (RuleSetResult set in result.Sets)
        {
            output.WriteLine($"{Machine(result)}, held against {set.Rules.Title} ({set.Rules.Edition})");
            RuleFinding[] told = [.. set.OfTheMachine.Where(f => f.Verdict != RuleVerdict.CannotBeTold)];
            int paragraph = told.Select(f => f.Row.Paragraph.Length).DefaultIfEmpty(0).Max();
            int title = told.Select(f => f.Row.Title.Length).DefaultIfEmpty(0).Max();
            foreach (RuleFinding f in told)
            {
                output.WriteLine($"  {Mark(f.Verdict),-9} {f.Row.Paragraph.PadRight(paragraph)}  {f.Row.Title.PadRight(title)}  {Told(f)}".TrimEnd());
            }

            Rest(output, set);
            output.WriteLine($"{set.Count(RuleVerdict.Kept)} kept, {set.Count(RuleVerdict.NotKept)} not kept, {set.Count(RuleVerdict.CannotBeTold)} cannot be told. One row with its condition and method: --show PARAGRAPH");
        }

        Close(output, result);
    }

    private static void Rest(TextWriter output, RuleSetResult set)
    {
        if (set.Count(RuleVerdict.CannotBeTold) > 0)
        {
            output.WriteLine("Cannot be told:");
            foreach (RuleFinding f in set.OfTheMachine.Where(f => f.Verdict == RuleVerdict.CannotBeTold))
            {
                output.WriteLine($"  {f.Row.Paragraph}  {f.Row.Title}");
                Wrap(output, f.Why, "      ");
            }
        }

        if (set.OfPeople.Any())
        {
            output.WriteLine("No number that a book holds; people judge:");
            Wrap(output, string.Join("; ", set.OfPeople.Select(f => f.Row.Paragraph)));
        }
    }

    /// <summary>Rows in full.</summary>
    public static void PrintRows(TextWriter output, RuleResult result)
    {
        foreach (RuleSetResult set in result.Sets)
        {
            foreach (RuleFinding f in set.Findings)
            {
                RuleRow row = f.Row;
                output.WriteLine($"{row.Paragraph}  {row.Title}");
                Part(output, "Published in", $"{set.Rules.Title}, {row.Edition}");
                Part(output, "Limit", row.Limit);
                Part(output, "Condition", row.Condition);
                Part(output, "Method", row.Method);
                Part(output, "Our reading", row.Reading);
                Part(output, "Confidence", RuleWords.Confidence(row.Confidence));
                Part(output, Machine(result), Verdict(f));
                output.WriteLine();
            }
        }

        Close(output, result);
    }

    /// <summary>What the book says beside the limit.</summary>
    private static string Told(RuleFinding f) => string.Join("; ", new[] { RuleWords.Value(f), RuleWords.Limits(f) }.Where(t => t.Length > 0));

    private static string Verdict(RuleFinding f)
    {
        string told = f.Verdict == RuleVerdict.CannotBeTold ? "" : Told(f);
        return $"{(f.Verdict == RuleVerdict.CannotBeTold ? "cannot be told" : Mark(f.Verdict))}{(told.Length > 0 ? $": {told}" : "")}. {f.Why}".TrimEnd();
    }

    private static string Mark(RuleVerdict verdict) => verdict switch { RuleVerdict.Kept => "kept", RuleVerdict.NotKept => "NOT KEPT", _ => "–" };

    private static string Machine(RuleResult result) => result.RoadNumber is { } number ? $"{result.Book} {number}" : result.Book;

    private static void Close(TextWriter output, RuleResult result)
    {
        if (result.Run is { } run)
        {
            output.WriteLine($"Measured in `{run.Request.StartName}`, seed {run.Request.Seed}, case {run.Request.Case}: {Clock.Text(run.End)} in {run.Steps} steps; hash {run.Hash:x16}; {BuildName.Text}");
            if (run.Trouble is { } trouble)
            {
                output.WriteLine($"Undecided: {trouble}.");
            }
        }

        output.WriteLine(RuleWords.Decide);
    }

    private static void Part(TextWriter output, string name, string text)
    {
        if (text.Length > 0)
        {
            output.WriteLine($"  {name}");
            Wrap(output, text, "    ");
        }
    }

    private static void Wrap(TextWriter output, string text, string indent = "  ")
    {
        const int Width = 110;
        string line = indent;
        foreach (string word in text.Split((char[])[' ', '\n'], StringSplitOptions.RemoveEmptyEntries))
        {
            if (line.Length + word.Length > Width && line.Length > indent.Length)
            {
                output.WriteLine(line.TrimEnd());
                line = indent;
            }

            line += word + " ";
        }

        output.WriteLine(line.TrimEnd());
    }
}
