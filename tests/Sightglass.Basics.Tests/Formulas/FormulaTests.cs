using Sightglass.Basics.Diagnostics;
using Sightglass.Basics.Formulas;
using Sightglass.Basics.Numbers;
using Sightglass.Basics.Quantities;

namespace Sightglass.Basics.Tests.Formulas;

public sealed class FormulaTests
{
    private static readonly NameTable s_names = Scopes.Fuel();

    [Theory]
    [InlineData("1 + 2 * 3", 7)]
    [InlineData("(1 + 2) * 3", 9)]
    [InlineData("8 - 2 - 1", 5)]
    [InlineData("8 / 2 / 2", 2)]
    [InlineData("-2 * -3", 6)]
    [InlineData("--2", 2)]
    [InlineData("2 − 3 × 4 ÷ 2", -4)]
    [InlineData("min(3, 1, 2)", 1)]
    [InlineData("max(3, min(9, 7), 2)", 7)]
    [InlineData("abs(2 - 5)", 3)]
    [InlineData("50 % + 0.25", 0.75)]
    [InlineData("1 m / 1 cm", 100)]
    [InlineData("2000 L / 2 m^3", 1)]
    [InlineData("1 1/4 in / 1/4 in", 5)]
    [InlineData("1 / 4 in * 1 in", 0.25)]
    [InlineData("100/2 s * 1 s", 50)]
    [InlineData("5 L/min / 5 L * 1 min", 1)]
    [InlineData("6 / min(2, 3)", 3)]
    [InlineData("(20 degC - 10 degC) / 1 K", 10)]
    [InlineData("1/4", 0.25)]
    public void Evaluate_Arithmetic_IsWhatASchoolChildGets(string text, double expected) =>
        Assert.Equal(expected, Value(text), 1e-12);

    [Theory]
    [InlineData("3 < 5", 2)]
    [InlineData("3 <= 5", 2)]
    [InlineData("3 ≤ 5", 2)]
    [InlineData("3 > 5", -2)]
    [InlineData("3 ≥ 5", -2)]
    [InlineData("not 3 > 5", 2)]
    [InlineData("not not 3 > 5", -2)]
    [InlineData("3 < 5 and 3 < 4", 1)]
    [InlineData("3 < 5 or 3 < 4", 2)]
    [InlineData("3 > 5 and 3 < 4 or 3 < 5", 2)]
    [InlineData("3 > 5 and (3 < 4 or 3 < 5)", -2)]
    public void Evaluate_Condition_IsItsMargin(string text, double margin)
    {
        Assert.Equal(margin, Value(text), 1e-12);
        Assert.True(Parse(text).IsCondition);
    }

    [Theory]
    [InlineData("0/(1 - 1) > 1 and 2 > 1", false)]
    [InlineData("2 > 1 and 0/(1 - 1) > 1", false)]
    [InlineData("0/(1 - 1) > 1 or 2 > 1", true)]
    [InlineData("2 > 1 or 0/(1 - 1) > 1", true)]
    [InlineData("max(0/(1 - 1), 2) > 1", false)]
    [InlineData("not 0/(1 - 1) > 1", false)]
    public void Evaluate_MarginThatIsNotANumber_DoesNotHold(string text, bool holds) => Assert.Equal(holds, Value(text) >= 0);

    [Fact]
    public void Evaluate_BookFormula_TakesItsNames()
    {
        Formula f = Parse("(volume of forward compartment + volume of centre compartment) / 2000 US gal");
        double[] values = new double[s_names.Count];
        (values[f.NamesUsed[0].Id], values[f.NamesUsed[1].Id]) = (3.0, 0.785411784);
        ScalarValues v = new(values);
        Assert.Equal(0.5, f.Evaluate<Scalar, ScalarValues>(ref v).V, 1e-12);
        Assert.Equal(Dimension.One, f.Dimension);
    }

    [Fact]
    public void Evaluate_Anything_AllocatesNothing()
    {
        Formula f = Parse("not (fill > 50 % and abs(level - 1/3) < max(2 %, fill * fill)) or engine runs");
        double[] values = new double[s_names.Count];
        ScalarValues one = new(values);
        LaneValues eight = new([values, values, values, values, values, values, values, values]);
        double sum = 0;
        Run(1000);
        long before = GC.GetAllocatedBytesForCurrentThread();
        Run(1000);
        long allocated = GC.GetAllocatedBytesForCurrentThread() - before;
        Assert.Equal(0, allocated);
        Assert.True(double.IsFinite(sum));

        void Run(int times)
        {
            for (int i = 0; i < times; i++)
            {
                sum += f.Evaluate<Scalar, ScalarValues>(ref one).V + f.Evaluate<Lanes, LaneValues>(ref eight)[3];
            }
        }
    }

    [Theory]
    [InlineData("a", "volume of forward compartment", "volume of forward compartment")]
    [InlineData("b", "(fill + level) * fill", "(fill + level) * fill")]
    [InlineData("c", "fill+(level*fill)", "fill + level * fill")]
    [InlineData("d", "fill-(level-fill)", "fill - (level - fill)")]
    [InlineData("e", "not (engine runs and fill>40%)", "not (engine runs and fill > 40 %)")]
    [InlineData("f", "max(1,2,3)", "max(max(1, 2), 3)")]
    [InlineData("g", "-(1 m)", "-(1 m)")]
    [InlineData("h", "1/4 in", "0.25 in")]
    public void ToStandardText_Formula_IsShort(string _, string text, string expected) => Assert.Equal(expected, Parse(text).ToStandardText());

    private static double Value(string text)
    {
        ScalarValues v = new(new double[s_names.Count]);
        return Parse(text).Evaluate<Scalar, ScalarValues>(ref v).V;
    }

    private static Formula Parse(string text)
    {
        DiagnosticList found = [];
        Formula? formula = FormulaParser.Parse(text, Span.None, s_names, found, FormulaKind.Any);
        Assert.Empty(found);
        return formula!;
    }
}
