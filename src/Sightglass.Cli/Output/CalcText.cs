using System.Collections.Immutable;
using Sightglass.Basics.Language;
using Sightglass.Basics.Quantities;
using Sightglass.Plant.Calculators.Sheets;

namespace Sightglass.Cli.Output;

/// <summary>Calculations in a terminal.</summary>
internal static class CalcText
{
    /// <summary>Spaces that every terminal shows alike.</summary>
    public static string Plain(string text) => text.Replace('\u202F', ' ').Replace('\u00A0', ' ');

    public static void List(TextWriter output)
    {
        foreach (CalculatorGroup group in CalculatorLibrary.Groups)
        {
            output.WriteLine(Say.Begin(CalculatorWord.Of(group.Name)));
            foreach (CalculatorSheet sheet in group.Sheets)
            {
                output.WriteLine($"  {CalculatorWord.Of(sheet.Name),-28}{CalculatorWord.Of(sheet.Purpose)}");
            }

            output.WriteLine();
        }

        output.WriteLine("calc NAME says what it asks for.");
    }

    public static void Asks(TextWriter output, CalculatorSheet sheet)
    {
        output.WriteLine(CalculatorWord.Of(sheet.Purpose));
        output.WriteLine();
        foreach (CalculatorValue v in sheet.Inputs)
        {
            string usual = v.Usual is null ? "" : Say.With($" ({new CalculatorWord(v.Usual)} where nothing is written)");
            output.WriteLine($"  {CalculatorWord.Of(v.Name),-16}{CalculatorWord.Of(v.Text)}{usual}");
        }

        output.WriteLine();
        Lines(output, CalculatorWord.Of(sheet.Formula).Split("; "));
        string example = string.Join(' ', sheet.Inputs.Select(v => $"\"{CalculatorWord.Of(v.Name)} = {CalculatorWord.Of(v.Example)}\""));
        string name = CalculatorWord.Of(sheet.Name);
        output.WriteLine($"calc {(name.Contains(' ', StringComparison.Ordinal) ? $"\"{name}\"" : name)} {example}");
    }

    public static void Print(TextWriter output, Calculation c, UnitSystem? units)
    {
        Lines(output, CalculatorWord.Of(c.Sheet.Formula).Split("; "));
        Lines(output, c.Worked().Where(l => l.Any(p => p.IsValue)).Select(l => string.Concat(l.Select(p => p.Text))));
        for (int i = 0; i < c.Results.Length; i++)
        {
            string other = units is null && UnitPairs.Other(UnitTable.Get(c.Sheet.Results[i].Example)) is { } unit ? $" ({QuantityFormat.Text(c.Results[i], unit)})" : "";
            output.WriteLine($"  {CalculatorWord.Of(c.Sheet.Results[i].Name),-16}{Plain(c.Shown(i, units) + other)}, {CalculatorWord.Of(c.Sheet.Results[i].Text)}");
        }

        output.WriteLine();
        foreach (string remark in c.Remarks)
        {
            output.WriteLine(remark);
        }

        output.WriteLine(Say.With($"Source: {new CalculatorWord(c.Sheet.Source)}."));
        output.WriteLine(CalculatorWord.Of(c.Sheet.Caution));
    }

    private static void Lines(TextWriter output, IEnumerable<string> lines)
    {
        ImmutableArray<string> all = [.. lines];
        foreach (string line in all)
        {
            output.WriteLine($"  {line}");
        }

        if (!all.IsEmpty)
        {
            output.WriteLine();
        }
    }
}
