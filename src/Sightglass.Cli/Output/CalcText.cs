using Sightglass.Plant.Calculators.Sheets;

namespace Sightglass.Cli.Output;

/// <summary>Calculations in a terminal.</summary>
internal static class CalcText
{
    public static void List(TextWriter output)
    {
        foreach (CalculatorSheet sheet in CalculatorLibrary.All)
        {
            output.WriteLine($"  {sheet.Name,-22}{sheet.Purpose}");
        }

        output.WriteLine();
        output.WriteLine("calc NAME says what it asks for.");
    }

    public static void Asks(TextWriter output, CalculatorSheet sheet)
    {
        output.WriteLine(sheet.Purpose);
        output.WriteLine();
        foreach (CalculatorValue v in sheet.Inputs)
        {
            output.WriteLine($"  {v.Name,-16}{v.Text}{(v.Usual is null ? "" : $" ({v.Usual} where nothing is written)")}");
        }

        output.WriteLine();
        output.WriteLine($"  {sheet.Formula}");
        output.WriteLine();
        string example = string.Join(' ', sheet.Inputs.Select(v => $"\"{v.Name} = {v.Example}\""));
        output.WriteLine($"calc {(sheet.Name.Contains(' ', StringComparison.Ordinal) ? $"\"{sheet.Name}\"" : sheet.Name)} {example}");
    }

    public static void Print(TextWriter output, Calculation c)
    {
        output.WriteLine($"  {c.Worked()}");
        output.WriteLine();
        for (int i = 0; i < c.Results.Length; i++)
        {
            output.WriteLine($"  {c.Sheet.Results[i].Name,-16}{c.Shown(i)}, {c.Sheet.Results[i].Text}");
        }

        output.WriteLine();
        output.WriteLine($"Source: {c.Sheet.Source}.");
        output.WriteLine(c.Sheet.Caution);
    }
}
