using CsCheck;
using Sightglass.Basics.Draws;
using Sightglass.Basics.Statistics;

namespace Sightglass.Basics.Tests.Statistics;

public sealed class AnytimeBoundTests
{
    private const int Runs = 2000;
    private const double Confidence = 0.95;

    private static readonly DrawKey s_key = DrawKey.Of("anytime");

    /// <summary>Simulated: runs in which the bound was wrong at any moment. The risk allows 100 of 2000.</summary>
    [Theory]
    [InlineData(0.01, 4000)]
    [InlineData(0.1, 500)]
    [InlineData(0.5, 200)]
    public void Upper_WatchedAtEveryCase_IsSeldomWrong(double chance, int tries)
    {
        double limit = -Math.Log(1 - Confidence);
        int wrong = WrongRuns(chance, tries, (failures, tried) => AnytimeBound.LogEvidenceBelow(failures, tried, chance) >= limit);
        Assert.InRange(wrong, 1, (int)(0.05 * Runs));
    }

    [Fact]
    public void Lower_WatchedAtEveryCase_IsSeldomWrong()
    {
        const double Chance = 0.1;
        double limit = -Math.Log(1 - Confidence);
        int wrong = WrongRuns(Chance, 500, (failures, tried) => AnytimeBound.LogEvidenceBelow(tried - failures, tried, 1 - Chance) >= limit);
        Assert.InRange(wrong, 1, (int)(0.05 * Runs));
    }

    /// <summary>What the anytime bound is for: the bound for a fixed number, watched all the time, is wrong far more often than it says.</summary>
    [Fact]
    public void FixedBound_WatchedAtEveryCase_IsWrongTooOften()
    {
        const double Chance = 0.1;
        int wrong = WrongRuns(Chance, 500, (failures, tried) => Binomial.AtMost(failures, tried, Chance) < 1 - Confidence);
        Assert.True(wrong > 0.15 * Runs, $"{wrong} of {Runs}");
    }

    [Fact]
    public void Upper_AnyCounts_IsWhereTheEvidenceReachesTheLimit() =>
        Gen.Select(Gen.Int[0, 50], Gen.Int[1, 3000], Gen.Double[0.8, 0.999]).Where((k, n, _) => k < n).Holds((k, n, confidence) =>
        {
            double upper = AnytimeBound.Upper(k, n, confidence);
            Assert.Equal(-Math.Log(1 - confidence), AnytimeBound.LogEvidenceBelow(k, n, upper), 1e-6);
            double above = upper + (0.5 * (1 - upper));
            Assert.True(AnytimeBound.LogEvidenceBelow(k, n, above) > -Math.Log(1 - confidence));
        });

    [Fact]
    public void Upper_AnyCounts_IsWiderThanTheFixedBoundButNotByMuch() =>
        Gen.Select(Gen.Int[0, 20], Gen.Int[100, 3000]).Holds((k, n) =>
            Assert.InRange(AnytimeBound.Upper(k, n, Confidence) / BinomialBounds.Upper(k, n, Confidence), 1, 2));

    [Fact]
    public void Both_NoTries_KnowsNothing()
    {
        Interval none = AnytimeBound.Both(0, 0, Confidence);
        Assert.Equal((0, 1), (none.Lower, none.Upper));
        Assert.Equal(1, AnytimeBound.Upper(5, 5, Confidence));
        Assert.Equal(0, AnytimeBound.Lower(0, 5, Confidence));
    }

    /// <summary>
    /// Runs in which a one-sided bound was wrong at some moment. Between failures the evidence only grows, after one it only falls,
    /// so it is enough to look before each failure, after it (for the other side) and at the end.
    /// </summary>
    private static int WrongRuns(double chance, int tries, Func<int, int, bool> isWrong)
    {
        Dictionary<(int, int), bool> known = [];
        int wrong = 0;
        for (uint run = 0; run < Runs; run++)
        {
            wrong += IsEverWrong(run, chance, tries, Known) ? 1 : 0;
        }

        return wrong;

        bool Known(int failures, int tried) =>
            known.TryGetValue((failures, tried), out bool found) ? found : known[(failures, tried)] = isWrong(failures, tried);
    }

    private static bool IsEverWrong(uint run, double chance, int tries, Func<int, int, bool> isWrong)
    {
        int failures = 0;
        for (int tried = 0; tried < tries; tried++)
        {
            if (!Draw.Happens(run, (ulong)tried, s_key, chance))
            {
                continue;
            }

            if (tried > 0 && isWrong(failures, tried))
            {
                return true;
            }

            failures++;
            if (isWrong(failures, tried + 1))
            {
                return true;
            }
        }

        return isWrong(failures, tries);
    }
}
