using System.Globalization;
using CsCheck;

namespace Sightglass.Basics.Tests.Formulas;

/// <summary>Makes formulas that are right, and heaps of their words that mostly are not.</summary>
internal static class FormulaTexts
{
    private const int Deepest = 4;

    private static readonly Gen<string> s_name = Gen.OneOf("fill", "level", "stop and proceed counter", "27-point control");

    private static readonly Gen<string> s_volume = Gen.OneOf("volume of forward compartment", "volume of centre compartment", "3 L", "45 US gal", "2\u2009000 L", "1 1/4 ft^3");

    private static readonly Gen<string> s_length = Gen.OneOf("forward sight glass, right", "forward sight glass", "1/4 in", "3 cm");

    private static readonly Gen<string> s_plainLiteral = Gen.Double[0, 1e6].Select(x => x.ToString("R", CultureInfo.InvariantCulture));

    private static readonly Gen<string> s_leaf = Gen.OneOf(
        s_name,
        s_plainLiteral,
        Gen.Select(s_volume, s_volume, (a, b) => $"{a} / {b}"),
        Gen.Select(s_length, s_length, (a, b) => $"({a}-{b}) / max({a}, {b})"),
        Gen.Const("40 %"),
        Gen.Const("-5"));

    /// <summary>A value or a condition, checked and right.</summary>
    public static Gen<string> Any { get; } = Gen.OneOf(Value(Deepest), Condition(Deepest));

    /// <summary>Words of the language in any order.</summary>
    public static Gen<string> Rubble { get; } = Gen.OneOf(
        "fill", "volume of", "forward compartment", "engine runs", "and", "or", "not", "min", "max", "abs", "(", ")", ",", "+", "-", "*", "/", "<",
        ">=", "=", "5", "1/4", "1e9", "psi", "US gal", "degC", "%", "$", "ambient temperature", "psia", "…", "0", "\uD83D\uDE82", "\u202F", "head-end")
        .Array[0, 30].Select(words => string.Join(' ', words));

    private static Gen<string> Value(int depth) => depth == 0
        ? s_leaf
        : Gen.OneOf(
            s_leaf,
            Gen.Select(Value(depth - 1), Gen.OneOf("+", "-", "*", "/", "×", "÷", "−"), Value(depth - 1), (a, op, b) => $"({a}) {op} ({b})"),
            Gen.Select(Value(depth - 1), Gen.OneOf("+", "*"), s_leaf, (a, op, b) => $"{a} {op} {b}"),
            Gen.Select(Value(depth - 1), Value(depth - 1), Gen.OneOf("min", "max"), (a, b, f) => $"{f}({a}, {b})"),
            Value(depth - 1).Select(a => $"abs({a})"),
            Value(depth - 1).Select(a => $"-({a})"));

    private static Gen<string> Condition(int depth) => depth == 0
        ? Gen.OneOf("engine runs", "running of engine")
        : Gen.OneOf(
            Gen.Select(Value(depth - 1), Gen.OneOf("<", "<=", ">", ">=", "≤", "≥"), Value(depth - 1), (a, op, b) => $"{a} {op} {b}"),
            Gen.Select(Condition(depth - 1), Gen.OneOf("and", "or"), Condition(depth - 1), (a, op, b) => $"{a} {op} {b}"),
            Gen.Select(Condition(depth - 1), Gen.OneOf("and", "or"), Condition(depth - 1), (a, op, b) => $"({a}) {op} ({b})"),
            Condition(depth - 1).Select(a => $"not {a}"),
            Condition(depth - 1).Select(a => $"not ({a})"));
}
