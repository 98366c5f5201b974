using CsCheck;
using Sightglass.Basics.Statistics;

namespace Sightglass.Basics.Tests.Statistics;

public sealed class BinomialBoundsTests
{
    /// <summary>
    /// Expected: engineering list A7-04. Wilson values after R. Newcombe, Statistics in Medicine 17 (1998), Table I method 3; Clopper-Pearson by beta quantiles.
    /// </summary>
    [Theory]
    [InlineData(81, 263, 0.25528852, 0.36620958, 0.25273675, 0.36762192)]
    [InlineData(15, 148, 0.062386400, 0.16048724, 0.057844010, 0.16165049)]
    [InlineData(18, 20, 0.69896636, 0.97213352, 0.68301729, 0.98765147)]
    public void A7_04_Intervals_PublishedCounts_HaveThePublishedEnds(
        int count, int tries, double wilsonLower, double wilsonUpper, double exactLower, double exactUpper)
    {
        Interval wilson = BinomialBounds.Wilson(count, tries, 0.95);
        Interval exact = BinomialBounds.ClopperPearson(count, tries, 0.95);
        Assert.Equal(wilsonLower, wilson.Lower, wilsonLower * 1e-6);
        Assert.Equal(wilsonUpper, wilson.Upper, wilsonUpper * 1e-6);
        Assert.Equal(exactLower, exact.Lower, exactLower * 1e-6);
        Assert.Equal(exactUpper, exact.Upper, exactUpper * 1e-6);
    }

    /// <summary>Expected: engineering list A8-02, binomial and beta quantiles.</summary>
    [Theory]
    [InlineData(59, 0.049507610)]
    [InlineData(100, 0.029513050)]
    [InlineData(300, 0.0099360819)]
    [InlineData(3000, 9.9807901e-4)]
    public void A8_02_ZeroFailureUpper_Tries_IsTheClosedForm(int tries, double expected)
    {
        Assert.Equal(expected, BinomialBounds.ZeroFailureUpper(tries, 0.95), expected * 1e-7);
        Assert.Equal(expected, BinomialBounds.Upper(0, tries, 0.95), expected * 1e-7);
        Assert.Equal(expected, BetaFunction.Quantile(1, tries, 0.95), expected * 1e-7);
    }

    [Theory]
    [InlineData(2, 50, 0.0048814334, 0.13713763)]
    [InlineData(1, 100, 2.5314603e-4, 0.054459385)]
    public void A8_02_ClopperPearson_FewFailures_HasTheExactEnds(int count, int tries, double lower, double upper)
    {
        Interval exact = BinomialBounds.ClopperPearson(count, tries, 0.95);
        Assert.Equal(lower, exact.Lower, lower * 1e-7);
        Assert.Equal(upper, exact.Upper, upper * 1e-7);
    }

    [Theory]
    [InlineData(0.05, 59)]
    [InlineData(0.01, 299)]
    public void ZeroFailureTries_Upper_IsTheLeastNumber(double upper, int tries) =>
        Assert.Equal(tries, BinomialBounds.ZeroFailureTries(upper, 0.95));

    [Fact]
    public void Upper_AnyCounts_LeavesExactlyTheRisk() =>
        Gen.Select(Gen.Int[0, 400], Gen.Int[1, 4000], Gen.Double[0.5, 0.999]).Where((k, n, _) => k < n).Holds((k, n, confidence) =>
        {
            Assert.Equal(1 - confidence, Binomial.AtMost(k, n, BinomialBounds.Upper(k, n, confidence)), 1e-10);
            Assert.Equal(k == 0 ? 1 : 1 - confidence, Binomial.AtLeast(k, n, BinomialBounds.Lower(k, n, confidence)), 1e-10);
        });

    [Fact]
    public void ClopperPearson_EdgeCounts_ReachTheEnds()
    {
        Assert.Equal(0, BinomialBounds.ClopperPearson(0, 10, 0.95).Lower);
        Assert.Equal(1, BinomialBounds.ClopperPearson(10, 10, 0.95).Upper);
        Assert.Equal(1, BinomialBounds.Upper(0, 0, 0.95));
        Assert.Throws<ArgumentOutOfRangeException>(() => BinomialBounds.Upper(3, 2, 0.95));
        Assert.Throws<ArgumentOutOfRangeException>(() => BinomialBounds.Upper(1, 2, 1));
    }
}
