using CsCheck;
using Sightglass.Basics.Statistics;

namespace Sightglass.Basics.Tests.Statistics;

public sealed class BinomialTests
{
    /// <summary>Expected: engineering list A7-05, binomial sums.</summary>
    [Theory]
    [InlineData(20, 0.25, 0.01, 11, 0.0039421417, 0.013864417)]
    [InlineData(25, 0.5, 0.05, 18, 0.021642625, 0.053876072)]
    [InlineData(40, 0.25, 0.001, 20, 5.7243111e-4, double.NaN)]
    public void A7_05_PassMark_GuessedAnswers_IsTheLeastThatGuessingMisses(
        int tries, double guess, double risk, int mark, double chance, double chanceBelow)
    {
        Assert.Equal(mark, Binomial.PassMark(tries, guess, risk));
        Assert.Equal(chance, Binomial.AtLeast(mark, tries, guess), chance * 1e-7);
        if (!double.IsNaN(chanceBelow))
        {
            Assert.Equal(chanceBelow, Binomial.AtLeast(mark - 1, tries, guess), chanceBelow * 1e-7);
        }
    }

    [Theory]
    [InlineData(0.8, 0.20608472)]
    [InlineData(0.9, 0.67692681)]
    [InlineData(0.95, 0.92451633)]
    public void A7_05_Mastery_EighteenOfTwenty_IsPassedThisOften(double skill, double chance) =>
        Assert.Equal(chance, Binomial.AtLeast(18, 20, skill), 1e-8);

    [Fact]
    public void AtLeast_SmallCounts_IsTheSum() => Gen.Select(Gen.Int[0, 30], Gen.Int[0, 30], Gen.Double[0.01, 0.99]).Holds((k, n, p) =>
    {
        double sum = 0;
        double term = Math.Pow(1 - p, n);
        for (int i = 0; i <= n; i++)
        {
            sum += i >= k ? term : 0;
            term *= p * (n - i) / ((1 - p) * (i + 1));
        }

        Assert.Equal(sum, Binomial.AtLeast(k, n, p), 1e-12);
        Assert.Equal(1 - sum, Binomial.AtMost(k - 1, n, p), 1e-12);
    });

    [Fact]
    public void PassMark_NoMarkIsEnough_IsOneMoreThanTheTries() => Assert.Equal(3, Binomial.PassMark(2, 0.9, 0.01));
}
