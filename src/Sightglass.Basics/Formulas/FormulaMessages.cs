using Sightglass.Basics.Diagnostics;
using Sightglass.Basics.Quantities;

namespace Sightglass.Basics.Formulas;

/// <summary>Texts of the findings about formulas: codes F001…F019. Places are offsets into the formula's text.</summary>
internal sealed class FormulaMessages(string text, Span span, DiagnosticList found)
{
    private const int MostFindings = 20;
    private const int MostSuggestions = 6;
    private int _suggestions;

    /// <summary>Errors so far.</summary>
    public int Errors { get; private set; }

    /// <summary>True when so much is wrong that more findings would not help.</summary>
    public bool IsFull => Errors >= MostFindings;

    public void Empty() => Error("F001", 0, text.Length, "the formula is empty", "write a value such as `volume of tank / 2000 US gal` or a comparison");

    public void TooLong(int most) => Error("F002", 0, text.Length, $"the formula has more than {most} characters", "split it into facts with names");

    public void TooDeep(int start, int end, int most) =>
        Error("F003", start, end, $"the formula is nested more than {most} deep", "split it into facts with names");

    public void Unexpected(int start, int end, string? fix = null) => Error("F004", start, end, $"unexpected `{Shown(start, end)}`", fix);

    public void MissingOperand(int at, string after)
    {
        string what = at >= text.Length ? $"the formula ends after {after}" : $"found `{Shown(at, at + 1)}` after {after}";
        Error("F005", Math.Min(at, Math.Max(0, text.Length - 1)), Math.Min(at + 1, text.Length), what, "expected a number, a name or `(`");
    }

    public void MissingClose(int open) => Error("F006", open, open + 1, "this `(` is never closed", "write `)` where it ends");

    public void UnknownName(int start, int end, INameScope scope)
    {
        string name = Phrase(start, end);
        Error("F007", start, end, $"unknown name `{Shown(start, end)}`", Suggest(name, scope.Names) ?? "names are written as in the book");
    }

    public void CannotCombine(string verb, FormulaNode a, FormulaNode b, string between, int start, int end) =>
        Error("F008", start, end, $"cannot {verb} {a.Dimension} {between} {b.Dimension}", UnitHint(a, b));

    public void NotAValue(FormulaNode node) =>
        Error("F009", node.Start, node.End, $"`{Shown(node.Start, node.End)}` is true or false, not a number", "join conditions with `and`, `or`, `not`");

    public void NotACondition(FormulaNode node) => Error(
        "F010", node.Start, node.End, $"`{Shown(node.Start, node.End)}` is {DimensionNames.WithArticle(node.Dimension)}, not true or false", "compare it: `… > 0`");

    public void WrongKind(FormulaNode node, Dimension expected) => Error(
        "F011", node.Start, node.End, $"the formula gives {DimensionNames.WithArticle(node.Dimension)}", $"expected {DimensionNames.WithArticle(expected)}");

    public void NumberTooLarge(int start, int end) =>
        Error("F012", start, end, $"`{Shown(start, end)}` is too large to be a number", "numbers go up to 1e308");

    public void DividesByZero(int start, int end) => Error("F012", start, end, $"`{Shown(start, end)}` divides by zero");

    public void UnknownUnit(int start, int end)
    {
        string word = Phrase(start, end);
        string? fix = Suggest(word, UnitTable.Symbols) ?? UnitEnding(word);
        Error("F013", start, end, $"unknown unit `{Shown(start, end)}`", fix ?? "after a number stands a unit or an operator");
    }

    public void WrongCount(string function, int start, int end) =>
        Error("F014", start, end, $"`{function}` takes {(function == "abs" ? "one value" : "two values or more")}");

    public void Chained(int start, int end) =>
        Error("F015", start, end, "one comparison at a time", "write `a < b and b < c`");

    public void ScaleInSum(FormulaNode node, string where) => Error(
        "F016", node.Start, node.End, $"`{Shown(node.Start, node.End)}` is a point on a temperature scale and cannot be {where}", "write a difference in `K`");

    public void DifferenceOnScale(FormulaNode node) => found.Warn(
        "F016", At(node.Start, node.End), $"a difference of temperatures is compared with the point `{Shown(node.Start, node.End)}`", "write the difference in `K`");

    public void ZeroTemperature(FormulaNode node) =>
        Error("F016", node.Start, node.End, "a temperature is compared with a 0 without a unit", "write `0 degC` or `0 K`");

    public void AbsolutePressure(int start, int end, string unit) => Error(
        "F017", start, end, $"`{unit}` measures from vacuum, but pressures in formulas are measured from the air around", "use `psi`, `bar` or `kPa`");

    public void TooManyPowers(int start, int end) => Error("F018", start, end, "the product measures nothing that exists", "check the units");

    public void EqualSign(int start, int end) =>
        Error("F019", start, end, $"`{Shown(start, end)}` asks for exact equality, which measured values never have", "use `<=`, `>=` or both");

    private static string? UnitHint(FormulaNode a, FormulaNode b) =>
        (a.Dimension == Dimension.One) != (b.Dimension == Dimension.One) ? "is a unit missing?" : null;

    private string? Suggest(string typed, IEnumerable<string> names) =>
        _suggestions++ < MostSuggestions ? Nearest.DidYouMean(typed, names) : null;

    private static string? UnitEnding(string word)
    {
        string? unit = UnitTable.Symbols.FirstOrDefault(s => s.EndsWith($" {word}", StringComparison.Ordinal));
        return unit is null ? null : $"did you mean `{unit}`?";
    }

    private void Error(string code, int start, int end, string message, string? fix = null)
    {
        if (!IsFull)
        {
            found.Error(code, At(start, end), message, fix);
        }

        Errors++;
    }

    private Span At(int start, int end) => span.Slice(text, start, Math.Max(0, end - start));

    /// <summary>Words with one space between them.</summary>
    private string Phrase(int start, int end) =>
        string.Join(' ', text[start..end].Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries));

    private string Shown(int start, int end)
    {
        string part = Phrase(start, Math.Min(end, text.Length));
        return part.Length <= 60 ? part : string.Concat(part.AsSpan(0, 57), "…");
    }
}
