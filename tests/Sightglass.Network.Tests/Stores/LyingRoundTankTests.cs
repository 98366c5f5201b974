using Sightglass.Network.Laws.Common;
using Sightglass.Network.Stores;
using Sightglass.Network.Tests.Probes;

namespace Sightglass.Network.Tests.Stores;

public sealed class LyingRoundTankTests
{
    private const double Density = 840;

    private static readonly double[] s_tank = LyingRoundTank.ParametersOf(1, 1, Density);

    /// <summary>Against the segment's area for a thousand angles from 2° to 178°. Source: circular segment, as A1_10.</summary>
    [Fact]
    public void Height_OfAnyFill_IsWithinABillionthOfTheRadius()
    {
        for (int i = 1; i < 1000; i++)
        {
            double angle = (0.035 + (i / 1000.0 * 3.07));
            double volume = angle - (Math.Sin(angle) * Math.Cos(angle));
            Assert.Equal(1 - Math.Cos(angle), Height(volume), 1e-9);
        }
    }

    [Fact]
    public void Height_OfComplementaryFills_AddUpToTheDiameter()
    {
        for (int i = 0; i <= 100; i++)
        {
            double share = i / 100.0;
            double riser = i is 0 or 100 ? 0.01 : 1e-9;
            Assert.Equal(2, Height(Math.PI * share) + Height(Math.PI * (1 - share)), riser);
        }
    }

    [Fact]
    public void Capacity_AtHalf_IsThatOfTheWholeWidth()
    {
        double capacity = StoreProbe.Evaluate<LyingRoundTank>([Math.PI / 2 * Density], s_tank).Capacities[0];
        Assert.Equal(2 / Physical.Gravity, capacity, 1e-9);
    }

    [Fact]
    public void Height_OfAnOverfullTank_RisesInTheVent() => Assert.Equal(2 + (0.0005 / 5e-4), Height(Math.PI + 0.0005), 1e-9);

    private static double Height(double volume) =>
        (StoreProbe.Potential<LyingRoundTank>(volume * Density, s_tank) - Physical.Atmosphere) / (Density * Physical.Gravity);
}
