using Sightglass.Basics.Diagnostics;
using Sightglass.Basics.Language;
using Sightglass.Basics.Quantities;

namespace Sightglass.Plant.Calculators.Sheets;

/// <summary>Reads what people put into a calculator; what is wrong is a sentence that stands at the input.</summary>
public static class CalculatorReader
{
    /// <summary>Characters of what was typed that a sentence repeats.</summary>
    private const int Repeated = 60;

    /// <summary>Reads one value.</summary>
    /// <param name="input">What is asked for.</param>
    /// <param name="text">As it was typed; null or blank where nothing was.</param>
    /// <param name="refusal">What is wrong and what would be right, in the language that is spoken.</param>
    public static CalculatorGiven? Read(CalculatorValue input, string? text, out string? refusal)
    {
        ArgumentNullException.ThrowIfNull(input);
        string typed = string.IsNullOrWhiteSpace(text) ? input.Usual ?? "" : text.Trim();
        if (typed.Length == 0)
        {
            refusal = Say.With($"“{Name(input)}” is missing: {new CalculatorWord(input.Text)}. Write it like “{Example(input)}”.");
            return null;
        }

        return input.Choices.IsEmpty ? ReadNumber(input, typed, out refusal) : ReadChoice(input, typed, out refusal);
    }

    /// <summary>The units in which an input may be written, in the order of the table.</summary>
    public static IEnumerable<string> UnitsOf(CalculatorValue input)
    {
        ArgumentNullException.ThrowIfNull(input);
        bool absolute = input.Basis != PressureBasis.Gauge;
        IEnumerable<string> units = UnitTable.Units.Where(u => u.Dimension == input.Dimension && (absolute || !u.IsAbsolute)).Select(u => u.Symbol);
        return units.Any() ? units : UnitsLike(input.Example);
    }

    /// <summary>Of a dimension without units of its own: that of the example, and the one on the other side of the border.</summary>
    private static IEnumerable<string> UnitsLike(string example)
    {
        QuantityText.TryParseAny(example, Span.None, [], out Quantity quantity);
        return new[] { quantity.Unit.Symbol, UnitPairs.Other(quantity.Unit)?.Symbol }.OfType<string>();
    }

    private static CalculatorGiven? ReadChoice(CalculatorValue input, string typed, out string? refusal)
    {
        int at = input.Choices.IndexOf(typed);
        at = at >= 0 ? at : input.Choices.Select(CalculatorWord.Of).ToList().IndexOf(typed);
        refusal = at >= 0 ? null : Say.With($"“{Name(input)}”: there is no “{Short(typed)}”. Write one of: {string.Join(", ", input.Choices.Select(CalculatorWord.Of))}.");
        return at >= 0 ? new(input.Choices[at], new(at, UnitTable.One)) : null;
    }

    private static CalculatorGiven? ReadNumber(CalculatorValue input, string typed, out string? refusal)
    {
        DiagnosticList found = [];
        if (!QuantityText.TryParse(typed, Span.None, input.Dimension, found, out Quantity quantity, input.Basis))
        {
            refusal = Sentence(input, Short(typed), found.First().Code);
            return null;
        }

        refusal = Limits(input, quantity, Short(typed));
        return refusal is null ? new(typed, quantity) : null;
    }

    private static string? Limits(CalculatorValue input, Quantity quantity, string typed)
    {
        if (input.IsWhole && quantity.Si != Math.Floor(quantity.Si))
        {
            return Say.With($"“{Name(input)}” counts things: “{typed}” is no whole number.");
        }

        bool inside = (input.Least is not { } low || quantity.Si >= SiOf(low, input)) && (input.Most is not { } high || quantity.Si <= SiOf(high, input));
        return inside ? null : (input.Least, input.Most) switch
        {
            ({ } a, { } b) => Say.With($"“{Name(input)}” is {typed}; it can be {a} to {b}."),
            ({ } a, null) => Say.With($"“{Name(input)}” is {typed}; it can be {a} or more."),
            (_, var b) => Say.With($"“{Name(input)}” is {typed}; it can be {b} or less."),
        };
    }

    /// <summary>What the reader of values found, for people who fill in one field.</summary>
    private static string Sentence(CalculatorValue input, string typed, string code)
    {
        string units = string.Join(", ", UnitsOf(input));
        bool plain = input.Dimension == Dimension.One;
        return code switch
        {
            "Q006" => Say.With($"“{Name(input)}”: “{typed}” has a comma or a space in its number. Write decimals with a point and thousands together, like “{Example(input)}”."),
            "Q009" => Say.With($"“{Name(input)}”: “{typed}” is measured from vacuum; here it is measured from the air around. Write it in {units}."),
            "Q002" or "Q003" or "Q004" when plain => Say.With($"“{Name(input)}”: “{typed}” has a unit that does not belong there. Write a plain number like “{Example(input)}”."),
            "Q002" => Say.With($"“{Name(input)}”: the unit in “{typed}” is not known. Write one of: {units}."),
            "Q003" => Say.With($"“{Name(input)}”: “{typed}” measures something else. Write one of: {units}."),
            "Q004" => Say.With($"“{Name(input)}”: “{typed}” has no unit. Write one behind it: {units}."),
            _ => Say.With($"“{Name(input)}”: “{typed}” is no number. Write it like “{Example(input)}”."),
        };
    }

    internal static double SiOf(string text, CalculatorValue input)
    {
        QuantityText.TryParse(text, Span.None, input.Dimension, [], out Quantity quantity, input.Basis);
        return quantity.Si;
    }

    private static CalculatorWord Name(CalculatorValue input) => new(input.Name);

    private static string Example(CalculatorValue input) => input.Choices.IsEmpty ? input.Example : CalculatorWord.Of(input.Example);

    private static string Short(string typed) => typed.Length <= Repeated ? typed : string.Concat(typed.AsSpan(0, Repeated - 1), "…");
}
