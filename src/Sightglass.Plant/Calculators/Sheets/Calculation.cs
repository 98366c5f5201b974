using System.Collections.Immutable;
using System.Text;
using Sightglass.Basics.Diagnostics;
using Sightglass.Basics.Quantities;

namespace Sightglass.Plant.Calculators.Sheets;

/// <summary>A calculator worked out once: what was put in, the formula with it, what comes out.</summary>
/// <param name="Sheet">Of the calculator.</param>
/// <param name="Given">In the order of its inputs, as they are written.</param>
/// <param name="Values">SI.</param>
/// <param name="Results">SI, in the order of its results.</param>
public sealed record Calculation(CalculatorSheet Sheet, ImmutableArray<string> Given, ImmutableArray<double> Values, ImmutableArray<double> Results)
{
    /// <summary>The code of a finding that says that there is no answer for these values.</summary>
    public static string NoAnswer => "K004";

    /// <summary>Works it out.</summary>
    /// <param name="sheet">Of the calculator.</param>
    /// <param name="given">Values by their names, as people write them: <c>speed</c> → <c>79 mph</c>.</param>
    /// <param name="found">Takes a finding for each value that is missing, unknown, of another sort or out of range.</param>
    /// <returns>Null after a finding.</returns>
    public static Calculation? Of(CalculatorSheet sheet, IReadOnlyDictionary<string, string> given, DiagnosticList found)
    {
        ArgumentNullException.ThrowIfNull(sheet);
        ArgumentNullException.ThrowIfNull(given);
        ArgumentNullException.ThrowIfNull(found);
        DiagnosticList own = [];
        string[] names = [.. sheet.Inputs.Select(i => i.Name)];
        foreach (string unknown in given.Keys.Where(k => !names.Contains(k, StringComparer.Ordinal)))
        {
            own.Error("K001", default, $"`{sheet.Name}` asks for no `{unknown}`", Nearest.DidYouMean(unknown, names) ?? $"it asks for {string.Join(", ", names.Select(n => $"`{n}`"))}");
        }

        (string Text, double Si)?[] values = [.. sheet.Inputs.Select(i => Read(i, given.GetValueOrDefault(i.Name) ?? i.Usual, own))];
        found.AddRange(own);
        if (own.HasErrors)
        {
            return null;
        }

        ImmutableArray<double> si = [.. values.Select(v => v!.Value.Si)];
        ImmutableArray<double> results = sheet.Work(si);
        if (results.Any(r => !double.IsFinite(r)))
        {
            found.Error("K004", default, sheet.NoAnswer, "change one of the values");
            return null;
        }

        return new(sheet, [.. values.Select(v => v!.Value.Text)], si, results);
    }

    /// <summary>The formula with the values put in.</summary>
    public string Worked()
    {
        // Longest names first, each put in once: a value may hold the name of another.
        (string Name, string Text)[] all = [.. Sheet.Inputs.Select((v, i) => (v.Name, Given[i])).OrderByDescending(v => v.Name.Length)];
        StringBuilder worked = new();
        for (int at = 0; at < Sheet.Formula.Length;)
        {
            (string Name, string Text) here = all.FirstOrDefault(v => IsAt(v.Name, at));
            worked.Append(here.Name is null ? Sheet.Formula[at] : here.Text);
            at += here.Name?.Length ?? 1;
        }

        return worked.ToString();
    }

    /// <summary>A result in the unit in which it is shown.</summary>
    public string Shown(int result)
    {
        CalculatorValue value = Sheet.Results[result];
        return QuantityFormat.Text(Results[result], UnitTable.Get(value.Example)).Replace('\u202F', ' ');
    }

    private bool IsAt(string name, int at)
    {
        string formula = Sheet.Formula;
        int end = at + name.Length;
        return string.CompareOrdinal(formula, at, name, 0, name.Length) == 0
            && (at == 0 || !char.IsLetterOrDigit(formula[at - 1]))
            && (end >= formula.Length || !char.IsLetterOrDigit(formula[end]));
    }

    private static (string Text, double Si)? Read(CalculatorValue input, string? text, DiagnosticList found)
    {
        if (text is null)
        {
            found.Error("K002", default, $"`{input.Name}` is missing: {input.Text}", $"write `{input.Name} = {input.Example}`");
            return null;
        }

        SourceText source = new(input.Name, text);
        if (!QuantityText.TryParse(text.Trim(), source.Between(0, text.Length), input.Dimension, found, out Quantity quantity, input.Basis))
        {
            return null;
        }

        if ((input.Least is { } least && quantity.Si < SiOf(least, input)) || (input.Most is { } most && quantity.Si > SiOf(most, input)))
        {
            string limits = (input.Least, input.Most) switch { ({ } a, { } b) => $"{a} to {b}", ({ } a, null) => $"{a} or more", (_, var b) => $"{b} or less" };
            found.Error("K003", source.Between(0, text.Length), $"`{input.Name}` is {text.Trim()}", $"it is {limits}");
            return null;
        }

        return (text.Trim(), quantity.Si);
    }

    private static double SiOf(string text, CalculatorValue input)
    {
        QuantityText.TryParse(text, Span.None, input.Dimension, [], out Quantity quantity, input.Basis);
        return quantity.Si;
    }
}
