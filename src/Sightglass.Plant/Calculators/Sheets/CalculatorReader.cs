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
        if (!QuantityText.TryParse(typed, Span.None, input.Dimension, [], out Quantity quantity, input.Basis))
        {
            refusal = Sentence(input, typed, Short(typed));
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

    /// <summary>What is wrong with a number that cannot be read, for people who fill in one field.</summary>
    private static string Sentence(CalculatorValue input, string typed, string shown)
    {
        string units = string.Join(", ", UnitsOf(input));
        bool isNumber = QuantityText.TryParseAny(typed, Span.None, [], out Quantity any), begins = typed.TrimStart('-', '+', '\u2212', '.') is [>= '0' and <= '9', ..];
        return (isNumber, input.Dimension == Dimension.One) switch
        {
            (false, _) when IsCutUp(typed) => Say.With($"“{Name(input)}”: “{shown}” has a comma or a space in its number. Write decimals with a point and thousands together, like “{Example(input)}”."),
            (false, _) when !begins || !HasOtherUnit(input, typed) => Say.With($"“{Name(input)}”: “{shown}” is no number. Write it like “{Example(input)}”."),
            (_, true) => Say.With($"“{Name(input)}”: “{shown}” has a unit that does not belong there. Write a plain number like “{Example(input)}”."),
            (false, _) => Say.With($"“{Name(input)}”: the unit in “{shown}” is not known. Write one of: {units}."),
            _ when any.Dimension == input.Dimension => Say.With($"“{Name(input)}”: “{shown}” is measured from vacuum; here it is measured from the air around. Write it in {units}."),
            _ when any.Dimension == Dimension.One => Say.With($"“{Name(input)}”: “{shown}” has no unit. Write one behind it: {units}."),
            _ => Say.With($"“{Name(input)}”: “{shown}” measures something else. Write one of: {units}."),
        };
    }

    /// <summary>Whether letters stand behind a number that are no unit of this input; else the number itself is what cannot be read (too large, divided by nothing).</summary>
    private static bool HasOtherUnit(CalculatorValue input, string typed) =>
        typed.Any(c => char.IsLetter(c) && c is not ('e' or 'E')) && !UnitsOf(input).Any(u => char.IsLetter(u[0]) && typed.EndsWith(' ' + u, StringComparison.Ordinal));

    /// <summary>Whether a comma, or a space between two digits, stands in a number.</summary>
    private static bool IsCutUp(string typed) =>
        typed.Contains(',', StringComparison.Ordinal) || Enumerable.Range(1, Math.Max(0, typed.Length - 2)).Any(i => typed[i] == ' ' && char.IsAsciiDigit(typed[i - 1]) && char.IsAsciiDigit(typed[i + 1]));

    internal static double SiOf(string text, CalculatorValue input)
    {
        QuantityText.TryParse(text, Span.None, input.Dimension, [], out Quantity quantity, input.Basis);
        return quantity.Si;
    }

    private static CalculatorWord Name(CalculatorValue input) => new(input.Name);

    private static string Example(CalculatorValue input) => input.Choices.IsEmpty ? input.Example : CalculatorWord.Of(input.Example);

    private static string Short(string typed) => typed.Length <= Repeated ? typed : string.Concat(typed.AsSpan(0, Repeated - 1), "…");
}
