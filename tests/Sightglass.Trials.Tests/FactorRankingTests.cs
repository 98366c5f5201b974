using System.Collections.Immutable;
using Sightglass.Trials.Maps;

namespace Sightglass.Trials.Tests;

/// <summary>How much a factor explains, against what is worked out by hand or follows from its definition.</summary>
public sealed class FactorRankingTests
{
    /// <summary>Two groups of four with 3 and 1 bad: whole 2, within 1.5, by chance 1 × 1.5 / 6; so (2 − 1.5 − 0.25) / 2.</summary>
    [Fact]
    public void Share_TwoGroups_AsByHand() =>
        Assert.Equal(0.125, FactorRanking.Share([(0, true), (0, true), (0, true), (0, false), (1, true), (1, false), (1, false), (1, false)]), 1e-12);

    [Fact]
    public void Share_GroupsThatSettleIt_IsOne() =>
        Assert.Equal(1, FactorRanking.Share([.. Enumerable.Range(0, 40).Select(i => (i % 4, i % 4 == 3))]), 1e-12);

    /// <summary>Groups that have nothing to do with it: nothing on average but what is cut off below 0, whatever the number of cases and groups (a share without the correction would be near groups / cases).</summary>
    [Theory]
    [InlineData(64, 10)]
    [InlineData(64, 4)]
    [InlineData(1024, 10)]
    public void Share_GroupsByChance_IsNearNothing(int cases, int groups)
    {
        Random chance = new(7);
        double mean = Enumerable.Range(0, 400).Average(_ => FactorRanking.Share(Drawn(chance, cases, groups)));
        Assert.InRange(mean, 0, 0.55 * groups / cases);
    }

    /// <summary>As many groups as cases explain anything, so nothing.</summary>
    [Fact]
    public void Share_AGroupEach_IsNothing() => Assert.Equal(0, FactorRanking.Share([(0, true), (1, false), (2, false)]));

    private static ImmutableArray<(int, bool)> Drawn(Random chance, int cases, int groups) =>
        [.. Enumerable.Range(0, cases).Select(i => (chance.Next(groups), i % 3 == 0))];
}
