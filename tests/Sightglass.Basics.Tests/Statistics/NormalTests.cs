using Sightglass.Basics.Statistics;

namespace Sightglass.Basics.Tests.Statistics;

/// <summary>Expected values: mpmath with 40 digits.</summary>
public sealed class NormalTests
{
    [Theory]
    [InlineData(-8, 0.99999999999999938)]
    [InlineData(-2.6, 0.99533881197628125)]
    [InlineData(-2.4, 0.99180246407540387)]
    [InlineData(-0.5, 0.6914624612740131)]
    [InlineData(0, 0.5)]
    [InlineData(1e-09, 0.49999999960105772)]
    [InlineData(1, 0.15865525393145705)]
    [InlineData(1.959964, 0.024999999096442402)]
    [InlineData(2.4, 0.0081975359245961314)]
    [InlineData(2.5, 0.0062096653257761352)]
    [InlineData(2.6, 0.004661188023718749)]
    [InlineData(4, 3.1671241833119921e-5)]
    [InlineData(8, 6.2209605742717841e-16)]
    [InlineData(20, 2.7536241186062337e-89)]
    [InlineData(37, 5.7255712225245768e-300)]
    public void Tail_Deviation_IsItsChance(double z, double expected) => Assert.Equal(expected, Normal.Tail(z), expected * 1e-13);

    [Theory]
    [InlineData(1e-300, -37.047096299361199)]
    [InlineData(1e-10, -6.3613409024040562)]
    [InlineData(0.025, -1.9599639845400542)]
    [InlineData(0.3, -0.52440051270804082)]
    [InlineData(0.5, 0.0)]
    [InlineData(0.975, 1.9599639845400539)]
    [InlineData(0.999999, 4.7534243088170878)]
    public void Quantile_Chance_IsItsDeviation(double chance, double z) => Assert.Equal(z, Normal.Quantile(chance), 1e-10);
}
