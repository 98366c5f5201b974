using Sightglass.Plant.Calculators;

namespace Sightglass.Plant.Tests.Calculators;

public sealed class DieselFuelTests
{
    /// <summary>(a) Linear rule, common practice; expected values computed independently.</summary>
    [Fact]
    public void A1_09_Volume_WarmedBy25Kelvin_GrowsByTwoPercent()
    {
        Assert.Equal(5.10375, DieselFuel.Volume(5, 25), 1e-9);
        Assert.Equal(822.92432, DieselFuel.Density(840, 25), 1e-5);
    }

    /// <summary>(b) ASTM D1250 table 54B, constants from memory; expected values computed independently.</summary>
    [Theory]
    [InlineData(850, 25, 0.97910731)]
    [InlineData(840, 15, 0.98729675)]
    public void A1_09_VolumeCorrection_OfTable54B_HasTheTablesValues(double density, double kelvin, double expected) =>
        Assert.Equal(expected, DieselFuel.VolumeCorrection(density, kelvin), 1e-8);

    [Fact]
    public void A1_09_TableExpansion_At850_IsTheTables() => Assert.Equal(8.3075792e-4, DieselFuel.TableExpansion(850), 1e-11);

    /// <summary>(c) 128 488 Btu per US gallon; expected values computed independently.</summary>
    [Theory]
    [InlineData(840, 42.632972e6)]
    [InlineData(850, 42.131407e6)]
    public void A1_09_HeatingValue_OfAGallon_PerKilogram(double density, double expected)
    {
        Assert.Equal(35.811696e9, DieselFuel.HeatingValuePerVolume, 35.8e9 * 1e-6);
        Assert.Equal(expected, DieselFuel.HeatingValue(density), expected * 1e-6);
    }
}
