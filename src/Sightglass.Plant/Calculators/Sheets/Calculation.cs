using System.Collections.Immutable;
using Sightglass.Basics.Diagnostics;
using Sightglass.Basics.Language;
using Sightglass.Basics.Quantities;

namespace Sightglass.Plant.Calculators.Sheets;

/// <summary>A calculator worked out once: what was put in, the formula with it, what comes out.</summary>
/// <param name="Sheet">Of the calculator.</param>
/// <param name="Given">In the order of its inputs.</param>
/// <param name="Results">SI, in the order of its results.</param>
public sealed record Calculation(CalculatorSheet Sheet, ImmutableArray<CalculatorGiven> Given, ImmutableArray<double> Results)
{
    /// <summary>SI, in the order of the inputs.</summary>
    public ImmutableArray<double> Values => [.. Given.Select(g => g.Value.Si)];

    /// <summary>What is to be known of these results, in the language that is spoken.</summary>
    public IEnumerable<string> Remarks => Sheet.Remarks.Where(r => r.Holds(Values, Results)).Select(r => CalculatorWord.Of(r.Text));

    /// <summary>Works it out.</summary>
    /// <param name="sheet">Of the calculator.</param>
    /// <param name="given">Values by their names, in English or in the language that is spoken, as people write them: <c>speed</c> → <c>79 mph</c>.</param>
    /// <param name="refused">Takes each value that is missing, unknown, of another sort or out of range.</param>
    /// <returns>Null after a refusal.</returns>
    public static Calculation? Of(CalculatorSheet sheet, IReadOnlyDictionary<string, string> given, ICollection<CalculatorRefusal> refused)
    {
        ArgumentNullException.ThrowIfNull(sheet);
        ArgumentNullException.ThrowIfNull(given);
        ArgumentNullException.ThrowIfNull(refused);
        int before = refused.Count;
        foreach (string unknown in given.Keys.Where(k => !sheet.Inputs.Any(i => i.Name == k || CalculatorWord.Of(i.Name) == k)))
        {
            string[] names = [.. sheet.Inputs.Select(i => i.Name)];
            refused.Add(new(unknown, $"`{sheet.Name}` asks for no `{unknown}`; {Nearest.DidYouMean(unknown, names) ?? $"it asks for {string.Join(", ", names.Select(n => $"`{n}`"))}"}"));
        }

        CalculatorGiven?[] values = [.. sheet.Inputs.Select(i => Read(i, given, refused))];
        if (refused.Count > before)
        {
            return null;
        }

        ImmutableArray<CalculatorGiven> read = [.. values.Select(v => v!.Value)];
        ImmutableArray<double> results = sheet.Work([.. read.Select(v => v.Value.Si)]);
        if (results.All(double.IsFinite))
        {
            return new(sheet, read, results);
        }

        refused.Add(new(null, Say.With($"{Say.Begin(CalculatorWord.Of(sheet.NoAnswer))}: change one of the values.")));
        return null;
    }

    /// <summary>The formula with the values put in, one line for each equation.</summary>
    public ImmutableArray<ImmutableArray<FormulaPart>> Worked()
    {
        // Longest names first, each put in once: a value may hold the name of another.
        (string Name, string Text)[] all =
        [
            .. Sheet.Inputs.Select((v, i) => (CalculatorWord.Of(v.Name), v.Choices.IsEmpty ? Given[i].Text : CalculatorWord.Of(Given[i].Text))).OrderByDescending(v => v.Item1.Length),
        ];
        return [.. CalculatorWord.Of(Sheet.Formula).Split("; ").Select(line => PutIn(line, all))];
    }

    /// <summary>A result in the unit in which it is shown.</summary>
    /// <param name="result">Its place.</param>
    /// <param name="system">Null for the unit of the sheet.</param>
    public string Shown(int result, UnitSystem? system = null) => QuantityFormat.Text(Results[result], UnitPairs.In(UnitTable.Get(Sheet.Results[result].Example), system));

    private static CalculatorGiven? Read(CalculatorValue input, IReadOnlyDictionary<string, string> given, ICollection<CalculatorRefusal> refused)
    {
        CalculatorGiven? value = CalculatorReader.Read(input, given.GetValueOrDefault(input.Name) ?? given.GetValueOrDefault(CalculatorWord.Of(input.Name)), out string? refusal);
        if (refusal is not null)
        {
            refused.Add(new(input.Name, refusal));
        }

        return value;
    }

    private static ImmutableArray<FormulaPart> PutIn(string line, (string Name, string Text)[] all)
    {
        List<FormulaPart> parts = [];
        int plain = 0;
        for (int at = 0; at < line.Length;)
        {
            (string Name, string Text) here = all.FirstOrDefault(v => IsAt(line, v.Name, at));
            if (here.Name is null)
            {
                at++;
                continue;
            }

            parts.Add(new(line[plain..at], false));
            at += here.Name.Length;
            parts.Add(new(at < line.Length && line[at] == '^' ? $"({here.Text})" : here.Text, true));
            plain = at;
        }

        parts.Add(new(line[plain..], false));
        return [.. parts.Where(p => p.Text.Length > 0)];
    }

    private static bool IsAt(string formula, string name, int at)
    {
        int end = at + name.Length;
        return string.CompareOrdinal(formula, at, name, 0, name.Length) == 0
            && (at == 0 || !char.IsLetterOrDigit(formula[at - 1]))
            && (end >= formula.Length || !char.IsLetterOrDigit(formula[end]));
    }
}
