using CsCheck;
using Sightglass.Basics.Diagnostics;
using Sightglass.Basics.Formulas;
using Sightglass.Basics.Numbers;

namespace Sightglass.Basics.Tests.Formulas;

public sealed class FormulaProperties
{
    private static readonly NameTable s_names = Scopes.Fuel();

    private static readonly Gen<double> s_number = Gen.OneOf(Gen.Double[-1000, 1000], Gen.OneOf(0.0, -0.0, 1.0, double.NaN, double.PositiveInfinity, 1e-310));

    [Fact]
    public void Evaluate_LanesAndScalar_AgreeBitForBit() =>
        Gen.Select(FormulaTexts.Any, s_number.Array[Lanes.Count * s_names.Count]).Holds((text, numbers) =>
        {
            Formula formula = Parse(text);
            double[][] lanes = [.. numbers.Chunk(s_names.Count)];
            LaneValues eight = new(lanes);
            Lanes together = formula.Evaluate<Lanes, LaneValues>(ref eight);
            for (int lane = 0; lane < Lanes.Count; lane++)
            {
                ScalarValues one = new(lanes[lane]);
                Assert.Equal(Bits(formula.Evaluate<Scalar, ScalarValues>(ref one).V), Bits(together[lane]));
            }
        });

    [Fact]
    public void ToStandardText_ParsedAgain_IsTheSameFormula() =>
        Gen.Select(FormulaTexts.Any, s_number.Array[s_names.Count]).Holds((text, numbers) =>
        {
            Formula first = Parse(text);
            Formula second = Parse(first.ToStandardText());
            ScalarValues values = new(numbers);
            Assert.Equal(first.ToStandardText(), second.ToStandardText());
            Assert.Equal(first.Dimension, second.Dimension);
            Assert.Equal(first.IsCondition, second.IsCondition);
            Assert.Equal(Bits(first.Evaluate<Scalar, ScalarValues>(ref values).V), Bits(second.Evaluate<Scalar, ScalarValues>(ref values).V));
        });

    [Fact]
    public void Parse_Garbage_NeverThrowsAndAlwaysSaysWhy() =>
        Gen.String.Holds(ReportsOrParses, iter: 20_000);

    [Fact]
    public void Parse_WordsThrownTogether_NeverThrowsAndAlwaysSaysWhy() =>
        FormulaTexts.Rubble.Holds(ReportsOrParses, iter: 20_000);

    private static void ReportsOrParses(string text)
    {
        DiagnosticList found = [];
        SourceText source = new("x", text);
        Formula? formula = FormulaParser.Parse(text, source.Between(0, text.Length), s_names, found, FormulaKind.Any);
        Assert.Equal(formula is null, found.HasErrors);
        Assert.All(found, d => Assert.InRange(d.Span.End, 0, text.Length));
        Assert.True(found.Count <= 40);
    }

    private static long Bits(double x) => double.IsNaN(x) ? long.MinValue : BitConverter.DoubleToInt64Bits(x);

    private static Formula Parse(string text)
    {
        DiagnosticList found = [];
        Formula? formula = FormulaParser.Parse(text, Span.None, s_names, found, FormulaKind.Any);
        Assert.True(formula is not null && found.Count == 0, $"{text}: {string.Join(" | ", found)}");
        return formula;
    }
}
