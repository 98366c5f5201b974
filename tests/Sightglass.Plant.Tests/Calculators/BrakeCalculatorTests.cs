using Sightglass.Plant.Calculators;

namespace Sightglass.Plant.Tests.Calculators;

/// <summary>Expected values computed independently from the formulas named beside each.</summary>
public sealed class BrakeCalculatorTests
{
    private const double Inch = 0.0254;
    private const double Pound = 4.4482216152605;
    private const double Psi = 6894.757293168;

    /// <summary>Two cylinders of 10 in at 50 psi, lever 8, efficiency 0.90 on 120,000 lb (definitions of the trade's brake standards, from memory).</summary>
    [Fact]
    public void A4_11_BrakingRatio_OfAVehicle_ForceRatioAndDeceleration()
    {
        double force = BrakingForce.Shoes(Math.PI / 4 * 100 * Inch * Inch, 50 * Psi, 2, 8, 0.90);
        Assert.Equal(56_548.668, force / Pound, 0.01);
        double ratio = BrakingForce.Ratio(force, 120_000 * Pound);
        Assert.Equal(0.47123890, ratio, 1e-7);
        Assert.Equal(0.14137167 / 1.05, BrakingForce.Deceleration(ratio, 0.30), 1e-7);
        Assert.Equal(1.3203643, 9.80665 * BrakingForce.Deceleration(ratio, 0.30), 1e-6);
    }

    /// <summary>20 kN a shoe (Karwatzki; European brake texts, from memory).</summary>
    [Theory]
    [InlineData(0, 0.30244091)]
    [InlineData(60, 0.12097637)]
    [InlineData(120, 0.095052859)]
    public void A4_12_CastIron_At20Kilonewtons_HasTheValuesOfTheFormula(double kilometresAnHour, double expected) =>
        Assert.Equal(expected, ShoeFriction.CastIron(20_000, kilometresAnHour / 3.6), 1e-8);

    /// <summary>130 short tons on 3 %; a train of 490 short tons on 2 % (statics).</summary>
    [Fact]
    public void A4_13_ParkingHold_OnAGrade_ForceAndHandBrakes()
    {
        double force = ParkingHold.Force(2000 * 130, 0.03);
        Assert.Equal(7796.4924, force, 1e-3);
        Assert.Equal(25_988.308, ParkingHold.Shoes(force, 0.30), 1e-2);
        Assert.Equal(6, ParkingHold.HandBrakes(2000 * 490, 0.02, 3350, 6.2, 0.60, 0.35));
    }
}
