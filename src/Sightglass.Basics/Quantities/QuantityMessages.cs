using Sightglass.Basics.Diagnostics;

namespace Sightglass.Basics.Quantities;

/// <summary>Texts of the findings about numbers with units: codes Q001…Q009.</summary>
internal static class QuantityMessages
{
    public static void NotANumber(DiagnosticList found, Span span, string text, string expected) =>
        found.Error("Q001", span, text.Length == 0 ? "a value is missing" : $"`{Shown(text)}` does not start with a number", $"expected {expected}");

    public static void UnknownUnit(DiagnosticList found, Span span, string unit, Dimension? expected)
    {
        string? near = expected is { } d ? Nearest.DidYouMean(unit, UnitTable.SymbolsOf(d)) : null;
        near ??= Nearest.DidYouMean(unit, UnitTable.Symbols);
        found.Error("Q002", span, $"unknown unit `{Shown(unit)}`", near ?? UnitsOf(expected));
    }

    public static void OtherDimension(DiagnosticList found, Span span, string text, Dimension got, Dimension expected) =>
        found.Error("Q003", span, $"`{Shown(text)}` is {DimensionNames.WithArticle(got)}", $"expected {DimensionNames.WithExample(expected)}");

    public static void NoUnit(DiagnosticList found, Span span, string text, Dimension expected) =>
        found.Error("Q004", span, $"`{Shown(text)}` has no unit", $"expected {DimensionNames.WithExample(expected)}");

    public static void TooLarge(DiagnosticList found, Span span, string text) =>
        found.Error("Q005", span, $"`{Shown(text)}` is too large to be a number", "numbers go up to 1e308");

    public static void ZeroBelow(DiagnosticList found, Span span, string text) =>
        found.Error("Q005", span, $"`{Shown(text)}` divides by zero");

    public static void CutUp(DiagnosticList found, Span span, string text) =>
        found.Error("Q006", span, $"`{Shown(text)}` has a comma or a space in its number", "write decimals with a point (`2.5`) and thousands together (`2000`)");

    public static void WrongOrder(DiagnosticList found, Span span, string text) =>
        found.Error("Q007", span, $"the range `{Shown(text)}` ends below its start", "write the smaller value first");

    public static void NotARange(DiagnosticList found, Span span, string text, string expected) =>
        found.Error("Q008", span, $"`{Shown(text)}` is not a range", $"write two values with `..` between them, each {expected}");

    public static void Absolute(DiagnosticList found, Span span, string unit) =>
        found.Error("Q009", span, $"`{unit}` measures from vacuum, but this pressure is measured from the air around", "use `psi`, `bar` or `kPa`");

    public static void Gauge(DiagnosticList found, Span span, string unit) =>
        found.Error("Q009", span, $"`{unit}` does not say that it measures from vacuum", "use `psia`, `bar abs`, `kPa abs` or `Pa`");

    private static string UnitsOf(Dimension? expected) => expected is { } d && UnitTable.SymbolsOf(d).Any()
        ? $"units of {d}: {string.Join(", ", UnitTable.SymbolsOf(d))}"
        : "see the table of units";

    /// <summary>At most 60 characters of what was found, without line ends.</summary>
    private static string Shown(string text)
    {
        string line = text.ReplaceLineEndings(" ");
        return line.Length <= 60 ? line : string.Concat(line.AsSpan(0, 57), "…");
    }
}
