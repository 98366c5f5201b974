using Sightglass.Basics.Diagnostics;
using Sightglass.Basics.Quantities;

namespace Sightglass.Basics.Tests.Quantities;

public sealed class QuantityTextTests
{
    [Theory]
    [InlineData("140 psi", 140 * 6894.757293168361)]
    [InlineData("140psi", 140 * 6894.757293168361)]
    [InlineData(" 1.5  bar ", 1.5e5)]
    [InlineData("-3 kPa", -3e3)]
    [InlineData("\u22123 kPa", -3e3)]
    [InlineData("+3 kPa", 3e3)]
    [InlineData("1/4 bar", 0.25e5)]
    [InlineData("1 1/4 bar", 1.25e5)]
    [InlineData("-1 1/4 bar", -1.25e5)]
    [InlineData("1¼ bar", 1.25e5)]
    [InlineData("½ bar", 0.5e5)]
    [InlineData(".5 bar", 0.5e5)]
    [InlineData("2e5 Pa", 2e5)]
    [InlineData("2\u2009000 Pa", 2000)]
    [InlineData("1\u202F000\u202F000.5 Pa", 1000000.5)]
    [InlineData("1 bar abs", 1e5)]
    public void TryParse_Pressure_IsItsPascals(string text, double pascals)
    {
        Quantity q = Read(text, Dimension.Pressure);
        Assert.Equal(pascals, q.Si, Math.Abs(pascals) * 1e-12);
    }

    [Theory]
    [InlineData("0.62", 0.62)]
    [InlineData("3 %", 0.03)]
    [InlineData("3%", 0.03)]
    [InlineData("90 deg", Math.PI / 2)]
    [InlineData("-1", -1)]
    public void TryParse_PlainNumber_NeedsNoUnit(string text, double value) =>
        Assert.Equal(value, Read(text, Dimension.One).Si, 1e-15);

    [Theory]
    [InlineData("20 degC", 293.15)]
    [InlineData("68 °F", 293.15)]
    [InlineData("-40 degF", 233.15)]
    [InlineData("10 K", 10)]
    public void TryParse_Temperature_IsAbsolute(string text, double kelvins) =>
        Assert.Equal(kelvins, Read(text, Dimension.Kelvin).Si, 1e-10);

    [Theory]
    [InlineData("45 US gal", 0.045 * 3.785411784)]
    [InlineData("45  US  gal", 0.045 * 3.785411784)]
    [InlineData("2 m³", 2)]
    [InlineData("1 ft^3", 0.028316846592)]
    public void TryParse_Volume_IsItsCubicMetres(string text, double volume) =>
        Assert.Equal(volume, Read(text, Dimension.Volume).Si, 1e-12);

    [Theory]
    [InlineData("", "Q001", "a value is missing; expected a pressure such as `90 psi`")]
    [InlineData("high", "Q001", "`high` does not start with a number; expected a pressure such as `90 psi`")]
    [InlineData("90 barr", "Q002", "unknown unit `barr`; did you mean `bar`?")]
    [InlineData("90 PSI", "Q002", "unknown unit `PSI`; did you mean `psi`?")]
    [InlineData("90 L", "Q003", "`90 L` is a volume; expected a pressure such as `90 psi`")]
    [InlineData("90", "Q004", "`90` has no unit; expected a pressure such as `90 psi`")]
    [InlineData("1e999 psi", "Q005", "`1e999 psi` is too large to be a number; numbers go up to 1e308")]
    [InlineData("1/0 psi", "Q005", "`1/0 psi` divides by zero")]
    [InlineData("2,5 bar", "Q006", "`2,5 bar` has a comma or a space in its number; write decimals with a point (`2.5`) and thousands together (`2000`)")]
    [InlineData("2 000 Pa", "Q006", "`2 000 Pa` has a comma or a space in its number; write decimals with a point (`2.5`) and thousands together (`2000`)")]
    public void TryParse_BadText_SaysWhatIsWrongAndWhatWouldBeRight(string text, string code, string message)
    {
        DiagnosticList found = [];
        Assert.False(QuantityText.TryParse(text, Span.None, Dimension.Pressure, found, out _));
        Diagnostic one = Assert.Single(found);
        Assert.Equal(code, one.Code);
        Assert.Equal($"{code}: {message}", one.ToString());
    }

    [Fact]
    public void TryParse_UnitOfAnotherDimensionMistyped_IsStillSuggested()
    {
        DiagnosticList found = [];
        QuantityText.TryParse("90 US gall", Span.None, Dimension.Pressure, found, out _);
        Assert.Equal("did you mean `US gal`?", Assert.Single(found).Fix);
    }

    [Fact]
    public void TryParse_UnknownUnit_IsShownAtItsPlace()
    {
        SourceText source = new("air.yaml", "kind: gauge\nscale:  12 barr \n");
        DiagnosticList found = [];
        QuantityText.TryParse(" 12 barr ", source.Between(19, 28), Dimension.Pressure, found, out _);
        Assert.Equal("air.yaml:2:12: Q002: unknown unit `barr`; did you mean `bar`?", Assert.Single(found).ToString());
    }

    [Theory]
    [InlineData("90 psia", PressureBasis.Gauge)]
    [InlineData("1 bar abs", PressureBasis.Gauge)]
    [InlineData("90 psi", PressureBasis.Absolute)]
    public void TryParse_OtherBasis_IsRefused(string text, PressureBasis basis)
    {
        DiagnosticList found = [];
        Assert.False(QuantityText.TryParse(text, Span.None, Dimension.Pressure, found, out _, basis));
        Assert.Equal("Q009", Assert.Single(found).Code);
    }

    [Theory]
    [InlineData("5 psi/min", 1, -1, -3)]
    [InlineData("5 MJ/kg", 0, 2, -2)]
    [InlineData("5 kN·m", 1, 2, -2)]
    [InlineData("5", 0, 0, 0)]
    public void TryParseAny_ComposedUnit_HasItsDimension(string text, int mass, int length, int time)
    {
        DiagnosticList found = [];
        Assert.True(QuantityText.TryParseAny(text, Span.None, found, out Quantity q));
        Assert.Equal(new Dimension((sbyte)mass, (sbyte)length, (sbyte)time), q.Dimension);
    }

    private static Quantity Read(string text, Dimension dimension)
    {
        DiagnosticList found = [];
        bool reads = QuantityText.TryParse(text, Span.None, dimension, found, out Quantity q);
        Assert.Empty(found);
        Assert.True(reads);
        return q;
    }
}
