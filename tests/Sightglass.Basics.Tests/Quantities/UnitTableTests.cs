using Sightglass.Basics.Quantities;

namespace Sightglass.Basics.Tests.Quantities;

/// <summary>Factors against NIST SP 811 appendix B.8 (from memory), to the digits printed there.</summary>
public sealed class UnitTableTests
{
    [Theory]
    [InlineData("psi", 6.894757e3)]
    [InlineData("inHg", 3.386389e3)]
    [InlineData("ftH2O", 2.989067e3)]
    [InlineData("hp", 7.456999e2)]
    [InlineData("Btu", 1.055056e3)]
    [InlineData("lb", 4.535924e-1)]
    [InlineData("short ton", 9.071847e2)]
    [InlineData("US gal", 3.785412e-3)]
    [InlineData("ft^3", 2.831685e-2)]
    [InlineData("in^2", 6.4516e-4)]
    [InlineData("mi", 1.609344e3)]
    [InlineData("mph", 4.4704e-1)]
    [InlineData("gpm", 6.309020e-5)]
    [InlineData("lb/h", 1.259979e-4)]
    [InlineData("lbf", 4.448222)]
    [InlineData("lb/ft^3", 1.601846e1)]
    [InlineData("kWh", 3.6e6)]
    [InlineData("yd", 0.9144)]
    public void Find_Unit_HasThePublishedFactor(string symbol, double factor) =>
        Assert.Equal(factor, UnitTable.Get(symbol).Factor, factor * 1e-6);

    [Fact]
    public void Find_EverySymbol_FindsItself()
    {
        foreach (string symbol in UnitTable.Symbols)
        {
            Assert.Equal(symbol, UnitTable.Find(symbol)?.Symbol);
        }
    }

    [Theory]
    [InlineData("m²", "m^2")]
    [InlineData("cm³", "cm^3")]
    [InlineData("m³/h", "m^3/h")]
    [InlineData("°F", "degF")]
    [InlineData("\u03A9", "Ohm")]
    [InlineData("\u2126", "Ohm")]
    public void Find_OtherSpelling_FindsTheUnit(string spelling, string symbol) => Assert.Equal(symbol, UnitTable.Find(spelling)?.Symbol);

    [Theory]
    [InlineData("scfm")]
    [InlineData("")]
    [InlineData("/")]
    [InlineData("m/")]
    [InlineData("W/degC")]
    [InlineData("psia/min")]
    [InlineData("gal")]
    [InlineData("m/s/s/s/s")]
    public void Find_WhatIsNoUnit_IsNull(string symbol) => Assert.Null(UnitTable.Find(symbol));

    [Fact]
    public void SiOf_EveryDimension_HasFactorOne() =>
        Assert.All(UnitTable.Units.Select(u => u.Dimension).Distinct(), d => Assert.Equal(1.0, UnitTable.SiOf(d).Factor));
}
