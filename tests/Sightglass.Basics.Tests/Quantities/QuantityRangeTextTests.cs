using Sightglass.Basics.Diagnostics;
using Sightglass.Basics.Quantities;

namespace Sightglass.Basics.Tests.Quantities;

public sealed class QuantityRangeTextTests
{
    [Theory]
    [InlineData("40 % .. 90 %", 0.4, 0.9)]
    [InlineData("40 .. 90 %", 0.4, 0.9)]
    [InlineData("40..90%", 0.4, 0.9)]
    [InlineData("-1 % … 1 %", -0.01, 0.01)]
    [InlineData("0.2 .. 0.2", 0.2, 0.2)]
    public void TryParse_Range_HasBothEnds(string text, double from, double to)
    {
        DiagnosticList found = [];
        Assert.True(QuantityRangeText.TryParse(text, Span.None, Dimension.One, found, out QuantityRange range));
        Assert.Empty(found);
        Assert.Equal(from, range.From, 1e-15);
        Assert.Equal(to, range.To, 1e-15);
    }

    [Fact]
    public void TryParse_SharedScaleUnit_ServesBothEnds()
    {
        Assert.True(QuantityRangeText.TryParse("32 .. 212 degF", Span.None, Dimension.Kelvin, [], out QuantityRange range));
        Assert.Equal(273.15, range.From, 1e-10);
        Assert.Equal(373.15, range.To, 1e-10);
    }

    [Theory]
    [InlineData("90 % .. 40 %", "Q007")]
    [InlineData("40 %", "Q008")]
    [InlineData("40 % .. 90 psi", "Q003")]
    [InlineData("x .. 90 %", "Q001")]
    public void TryParse_BadRange_IsReported(string text, string code)
    {
        DiagnosticList found = [];
        Assert.False(QuantityRangeText.TryParse(text, Span.None, Dimension.One, found, out _));
        Assert.Equal(code, Assert.Single(found).Code);
    }

    [Fact]
    public void TryParse_BothEndsBad_ReportsBoth()
    {
        DiagnosticList found = [];
        QuantityRangeText.TryParse("4 barr .. 5 psl", Span.None, Dimension.Pressure, found, out _);
        Assert.Equal(2, found.Count);
    }

    [Fact]
    public void TryParseValueOrRange_SingleValue_IsFixed()
    {
        Assert.True(QuantityRangeText.TryParseValueOrRange("5 min", Span.None, Dimension.Second, [], out QuantityRange range));
        Assert.True(range.IsFixed);
        Assert.Equal(300, range.From);
    }
}
