using Sightglass.Basics.Statistics;

namespace Sightglass.Basics.Tests.Statistics;

public sealed class SobolTests
{
    /// <summary>Expected: engineering list A8-01, scipy.stats.qmc.Sobol without scrambling.</summary>
    [Fact]
    public void A8_01_Point_FourDimensions_IsThePublishedSequence()
    {
        double[][] expected =
        [
            [0, 0, 0, 0], [0.5, 0.5, 0.5, 0.5], [0.75, 0.25, 0.25, 0.25], [0.25, 0.75, 0.75, 0.75],
            [0.375, 0.375, 0.625, 0.875], [0.875, 0.875, 0.125, 0.375], [0.625, 0.125, 0.875, 0.625], [0.125, 0.625, 0.375, 0.125],
        ];
        for (uint i = 0; i < expected.Length; i++)
        {
            Assert.Equal(expected[i], Point(4, i));
        }
    }

    /// <summary>Expected: scipy 1.10.1, qmc.Sobol(32, scramble=False, bits=32).</summary>
    [Fact]
    public void A8_01_Point_ManyDimensions_IsThatOfAnotherProgram()
    {
        Assert.Equal([0.125, 0.625, 0.375, 0.125, 0.125, 0.375, 0.625, 0.625], Point(8, 7));
        Assert.Equal([0.4375, 0.5625, 0.1875, 0.6875, 0.8125, 0.0625, 0.6875, 0.6875], Point(8, 11));
        Assert.Equal([0.2197265625, 0.2802734375, 0.8994140625, 0.3701171875, 0.1455078125], Some(1000, 0, 4, 7, 15, 31));
        Assert.Equal([0.000732421875, 0.319580078125, 0.422607421875, 0.777587890625, 0.485595703125], Some(2048, 0, 4, 7, 15, 31));
        Assert.Equal(
            [0.9758977368474007, 0.792431928217411, 0.6922742202877998, 0.238566093146801, 0.4847627952694893], Some(123_456_789, 0, 1, 7, 20, 31));
    }

    [Fact]
    public void Point_FirstPowerOfTwo_FillsEveryCellOnceInEachDimension()
    {
        const int Count = 1024;
        double[][] points = [.. Enumerable.Range(0, Count).Select(i => Point(32, (uint)i))];
        for (int d = 0; d < 32; d++)
        {
            Assert.Equal(Count, points.Select(p => (int)(p[d] * Count)).Distinct().Count());
        }
    }

    [Theory]
    [InlineData(0)]
    [InlineData(33)]
    public void Constructor_OtherDimensions_IsRefused(int dimensions) => Assert.Throws<ArgumentOutOfRangeException>(() => new Sobol(dimensions));

    private static double[] Some(uint index, params int[] dimensions)
    {
        double[] point = Point(32, index);
        return [.. dimensions.Select(d => point[d])];
    }

    private static double[] Point(int dimensions, uint index)
    {
        double[] point = new double[dimensions];
        new Sobol(dimensions).Point(index, point);
        return point;
    }
}
