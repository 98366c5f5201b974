using Sightglass.Basics.Statistics;

namespace Sightglass.Basics.Tests.Statistics;

/// <summary>Expected: engineering list A8-03, after S. Wilks 1941 and 1942.</summary>
public sealed class WilksTests
{
    [Theory]
    [InlineData(0.95, 0.95, 1, 59)]
    [InlineData(0.95, 0.95, 2, 93)]
    [InlineData(0.95, 0.95, 3, 124)]
    [InlineData(0.95, 0.95, 4, 153)]
    [InlineData(0.95, 0.95, 5, 181)]
    [InlineData(0.99, 0.95, 1, 299)]
    [InlineData(0.95, 0.99, 1, 90)]
    [InlineData(0.99, 0.99, 1, 459)]
    public void A8_03_LeastOneSided_CoverageAndConfidence_IsThePublishedNumber(double coverage, double confidence, int order, int runs) =>
        Assert.Equal(runs, Wilks.LeastOneSided(coverage, confidence, order));

    [Fact]
    public void A8_03_Confidence_AroundTheLeastNumbers_IsAsPublished()
    {
        Assert.Equal(93, Wilks.LeastTwoSided(0.95, 0.95));
        Assert.Equal(0.95150547, Wilks.OneSided(59, 0.95), 1e-8);
        Assert.Equal(0.94895313, Wilks.OneSided(58, 0.95), 1e-8);
        Assert.Equal(0.95002421, Wilks.TwoSided(93, 0.95), 1e-8);
        Assert.Equal(0.94786360, Wilks.TwoSided(92, 0.95), 1e-8);
    }
}
