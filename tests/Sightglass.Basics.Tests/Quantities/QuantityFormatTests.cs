using Sightglass.Basics.Quantities;

namespace Sightglass.Basics.Tests.Quantities;

public sealed class QuantityFormatTests
{
    [Theory]
    [InlineData(1.25, "L", 0.001, "1_250_L")]
    [InlineData(1.2504, "L", 0.0001, "1_250.4_L")]
    [InlineData(12345.678, "L", 0.01, "12_345_680_L")]
    [InlineData(620528.156385, "psi", 6894.757293168361, "90_psi")]
    [InlineData(293.15, "degF", 5.0 / 9, "68_°F")]
    [InlineData(-0.02, "%", 0.01, "−2_%")]
    [InlineData(-0.001, "%", 0.01, "0_%")]
    [InlineData(0.125, "%", 0.005, "12.5_%")]
    [InlineData(0.5, "1", 0.25, "0.50")]
    [InlineData(double.NaN, "L", 1.0, "–_L")]
    public void Text_AtResolution_ShowsAsManyDigits(double si, string unit, double resolution, string expected) =>
        Assert.Equal(expected.Replace('_', '\u202F'), QuantityFormat.Text(si, UnitTable.Get(unit), resolution));

    [Theory]
    [InlineData(1234567.0, "m", "1_234_567_m")]
    [InlineData(0.0123456, "m", "0.01235_m")]
    [InlineData(2.5, "m^2", "2.5_m²")]
    [InlineData(0.0, "m", "0_m")]
    public void Text_WithoutResolution_ShowsFourSignificantDigits(double si, string unit, string expected) =>
        Assert.Equal(expected.Replace('_', '\u202F'), QuantityFormat.Text(si, UnitTable.Get(unit)));

    [Fact]
    public void Text_UnitOfTwoWords_DoesNotBreak() =>
        Assert.Equal("5\u202FUS\u00A0gal", QuantityFormat.Text(5 * 0.003785411784, UnitTable.Get("US gal"), 0.003785411784));
}
