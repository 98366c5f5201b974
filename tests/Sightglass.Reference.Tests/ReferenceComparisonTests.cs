using System.Collections.Immutable;
using Sightglass.Reference.Tests.Networks;

namespace Sightglass.Reference.Tests;

public sealed class ReferenceComparisonTests
{
    private static readonly SampleTable s_expected = SampleTable.Parse("time_s,A,B\n0,1,2\n5,3,4\n");

    [Fact]
    public void Between_KnownErrors_GivesTheirFigures()
    {
        ReferenceComparison c = ReferenceComparison.Between(s_expected, [[1, 2], [3, 4.2]]);
        Assert.Equal(0.1, c.Rms, 1e-12);
        Assert.Equal(0.2, c.Percentile999, 1e-12);
        Assert.Equal(0.2, c.Worst, 1e-12);
        Assert.Equal(("B", 5.0), (c.WorstStore, c.WorstTime));
        Assert.False(c.IsWithin(0.1, 0.1, 1));
    }

    [Fact]
    public void Between_NotANumber_IsInfinitelyFar() =>
        Assert.Equal(double.PositiveInfinity, ReferenceComparison.Between(s_expected, [[1, 2], [double.NaN, 4]]).Worst);

    [Fact]
    public void Between_OtherShape_IsRefused() =>
        Assert.Throws<ArgumentException>(() => ReferenceComparison.Between(s_expected, [[1, 2]]));
}
