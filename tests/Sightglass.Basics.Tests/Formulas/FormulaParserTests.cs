using Sightglass.Basics.Diagnostics;
using Sightglass.Basics.Formulas;
using Sightglass.Basics.Quantities;

namespace Sightglass.Basics.Tests.Formulas;

public sealed class FormulaParserTests
{
    [Theory]
    [InlineData("", "F001")]
    [InlineData("   ", "F001")]
    [InlineData("volume of forward compartment + head-end load", "F008")]
    [InlineData("volume of forward compartment > 3 psi", "F008")]
    [InlineData("max(fill, 3 L)", "F008")]
    [InlineData("fill + 3 L", "F008")]
    [InlineData("engine runs + 1", "F009")]
    [InlineData("fill and engine runs", "F010")]
    [InlineData("not fill", "F010")]
    [InlineData("1e999", "F012")]
    [InlineData("1/0", "F012")]
    [InlineData("abs(fill, level)", "F014")]
    [InlineData("min(fill)", "F014")]
    [InlineData("0 < fill < 1", "F015")]
    [InlineData("ambient temperature + 20 degC > 0 degC", "F016")]
    [InlineData("ambient temperature > 0", "F016")]
    [InlineData("pressure of fuel header > 20 psia", "F017")]
    [InlineData("fill = 0", "F019")]
    [InlineData("fill == level", "F019")]
    [InlineData("fill <> level", "F019")]
    [InlineData("fill +", "F005")]
    [InlineData("* fill", "F005")]
    [InlineData("()", "F005")]
    [InlineData("(fill", "F006")]
    [InlineData("fill)", "F004")]
    [InlineData("fill $ level", "F004")]
    [InlineData("fill 5", "F007")]
    [InlineData("engine", "F007")]
    [InlineData("running of engin", "F007")]
    [InlineData("5 wombats", "F013")]
    public void Parse_BadFormula_HasOneFinding(string text, string code)
    {
        DiagnosticList found = [];
        Assert.Null(FormulaParser.Parse(text, Span.None, Scopes.Fuel(), found, FormulaKind.Any));
        Assert.Equal(code, Assert.Single(found).Code);
    }

    [Theory]
    [InlineData("volume of forwrd compartment", "unknown name `volume of forwrd compartment`; did you mean `volume of forward compartment`?")]
    [InlineData("volume of forward compartment lft", "unknown name `volume of forward compartment lft`; did you mean `volume of forward compartment`?")]
    [InlineData("max(levl, fill)", "unknown name `levl`; did you mean `level`?")]
    [InlineData("volume of forward compartment + fill", "cannot add volume and a plain number; is a unit missing?")]
    [InlineData("volume of forward compartment - forward sight glass", "cannot subtract length from volume")]
    [InlineData("volume of forward compartment < forward sight glass", "cannot compare volume with length")]
    [InlineData("pressure of fuel header > 3 barr", "unknown unit `barr`; did you mean `bar`?")]
    [InlineData("2000 gal", "unknown unit `gal`; did you mean `US gal`?")]
    [InlineData("fill / (level", "this `(` is never closed; write `)` where it ends")]
    [InlineData("fill *", "the formula ends after `*`; expected a number, a name or `(`")]
    public void Parse_BadFormula_SaysWhatWouldBeRight(string text, string message)
    {
        DiagnosticList found = [];
        FormulaParser.Parse(text, Span.None, Scopes.Fuel(), found, FormulaKind.Any);
        Diagnostic one = Assert.Single(found);
        Assert.Equal(message, one.Fix is null ? one.Message : $"{one.Message}; {one.Fix}");
    }

    [Fact]
    public void Parse_ManyErrors_ReportsEachAtItsPlace()
    {
        const string Text = "(volume of forwrd compartment + 3 psl) > 5 L and fill + 1 m > levl";
        SourceText source = new("fuel.yaml", "is: " + Text);
        DiagnosticList found = [];
        FormulaParser.Parse(Text, source.Between(4, source.Text.Length), Scopes.Fuel(), found, FormulaKind.Condition);
        Assert.Equal(
            [
                "fuel.yaml:1:6: F007: unknown name `volume of forwrd compartment`; did you mean `volume of forward compartment`?",
                "fuel.yaml:1:39: F013: unknown unit `psl`; did you mean `psi`?",
                "fuel.yaml:1:54: F008: cannot add a plain number and length; is a unit missing?",
                "fuel.yaml:1:67: F007: unknown name `levl`; did you mean `level`?",
            ],
            found.Select(d => d.ToString()));
        Assert.Equal("fill + 1 m", found.ElementAt(2).Span.Text);
    }

    [Fact]
    public void Parse_WrongKind_SaysWhatWasExpected()
    {
        DiagnosticList found = [];
        FormulaParser.Parse("fill", Span.None, Scopes.Fuel(), found, FormulaKind.Value(Dimension.Pressure));
        FormulaParser.Parse("fill", Span.None, Scopes.Fuel(), found, FormulaKind.Condition);
        FormulaParser.Parse("engine runs", Span.None, Scopes.Fuel(), found, FormulaKind.AnyValue);
        Assert.Equal(["F011", "F010", "F009"], found.Select(d => d.Code));
    }

    [Fact]
    public void Parse_LongestNameWins_WithItsComma()
    {
        Assert.Equal("forward sight glass, right", Assert.Single(Good("forward sight glass, right").NamesUsed).Name);
        Assert.Equal("forward sight glass, right", Assert.Single(Good("max(forward sight glass, right, 3 cm)").NamesUsed).Name);
        Assert.Equal("forward sight glass", Assert.Single(Good("max(forward sight glass, 3 cm)").NamesUsed).Name);
        Assert.Equal("stop and proceed counter", Assert.Single(Good("stop and proceed counter").NamesUsed).Name);
        Assert.Equal("27-point control", Assert.Single(Good("27-point control").NamesUsed).Name);
    }

    [Fact]
    public void Parse_Hyphen_JoinsOrSubtracts()
    {
        Assert.Single(Good("head-end load").NamesUsed);
        Assert.Equal(2, Good("fill-level").NamesUsed.Length);
        Assert.Equal("F007", Assert.Single(Findings("head-end lod")).Code);
    }

    [Fact]
    public void Parse_DifferenceComparedWithScale_Warns()
    {
        DiagnosticList found = [];
        Formula? formula = FormulaParser.Parse(
            "temperature of cooling water - ambient temperature > 10 degC", Span.None, Scopes.Fuel(), found, FormulaKind.Condition);
        Assert.NotNull(formula);
        Assert.Equal(("F016", Severity.Warning), (Assert.Single(found).Code, Assert.Single(found).Severity));
    }

    [Theory]
    [InlineData('(')]
    [InlineData('-')]
    public void Parse_DeepNesting_IsRefusedWithoutTrouble(char c)
    {
        string text = new string(c, 9_000) + "fill";
        Assert.Contains(Findings(text), d => d.Code == "F003");
    }

    [Fact]
    public void Parse_ManyWaitingOperands_IsRefused()
    {
        string text = string.Concat(Enumerable.Repeat("fill + level * (", 40)) + "fill" + new string(')', 40);
        Assert.Equal("F003", Assert.Single(Findings(text)).Code);
    }

    [Fact]
    public void Parse_LongSum_IsNotDeep() => Good(string.Join(" + ", Enumerable.Repeat("fill", 1200)));

    [Fact]
    public void Parse_TooLong_IsRefused() => Assert.Equal("F002", Assert.Single(Findings(new string('a', FormulaParser.LongestText + 1))).Code);

    [Fact]
    public void Parse_TooManyPowers_IsRefused() =>
        Assert.Equal("F018", Assert.Single(Findings(string.Join(" * ", Enumerable.Repeat("volume of forward compartment", 60)))).Code);

    private static DiagnosticList Findings(string text)
    {
        DiagnosticList found = [];
        Assert.Null(FormulaParser.Parse(text, Span.None, Scopes.Fuel(), found, FormulaKind.Any));
        return found;
    }

    private static Formula Good(string text)
    {
        DiagnosticList found = [];
        Formula? formula = FormulaParser.Parse(text, Span.None, Scopes.Fuel(), found, FormulaKind.Any);
        Assert.Empty(found);
        return formula!;
    }
}
