using Sightglass.Plant.Calculators;

namespace Sightglass.Plant.Tests.Calculators;

public sealed class FuelRateTests
{
    /// <summary>Heywood ch. 2 (from memory): 2,000 kW at 0.215 kg/kWh, 42,633 kJ/kg, 840 kg/m³.</summary>
    [Fact]
    public void A1_12_FuelRate_OfAnEngineAtFullPower_HasTheTextbooksValues()
    {
        const double PerKilowattHour = 1 / 3.6e6;
        Assert.Equal(430, FuelRate.Mass(2e6, 0.215 * PerKilowattHour) * 3600, 1e-9);
        Assert.Equal(511.90476, FuelRate.Volume(2e6, 0.215 * PerKilowattHour, 840) * 3.6e6, 1e-5);
        Assert.Equal(0.39275177, FuelRate.Efficiency(0.215 * PerKilowattHour, 42.633e6), 1e-8);
    }
}
