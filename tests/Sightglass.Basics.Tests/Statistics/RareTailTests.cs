using Sightglass.Basics.Statistics;

namespace Sightglass.Basics.Tests.Statistics;

/// <summary>Expected: engineering list A8-04, textbook importance sampling.</summary>
public sealed class RareTailTests
{
    [Theory]
    [InlineData(10, 0.01, 10)]
    [InlineData(250, 0.05, 13)]
    [InlineData(1, 1, 0)]
    [InlineData(8, 1, 3)]
    public void A8_04_Bisections_LengthAndTolerance_IsTheLogarithm(double length, double tolerance, int count) =>
        Assert.Equal(count, RareTail.Bisections(length, tolerance));

    [Fact]
    public void A8_04_ChanceToMiss_OnePercentInThreeHundred_IsAsPublished() =>
        Assert.Equal(0.049040894, RareTail.ChanceToMiss(0.01, 300), 0.049 * 1e-6);

    [Fact]
    public void A8_04_Draws_FourDeviations_AreFarFewerWhenShifted()
    {
        Assert.Equal(3.1671242e-5, Normal.Tail(4), 3.2e-5 * 1e-6);
        Assert.Equal(3_157_338.5, RareTail.CrudeDraws(Normal.Tail(4), 0.1), 3.2e6 * 1e-6);
        Assert.Equal(451.11087, RareTail.ShiftedDraws(4, 0.1), 451 * 1e-6);
    }
}
