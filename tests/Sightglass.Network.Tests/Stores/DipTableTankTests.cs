using CsCheck;
using Sightglass.Network.Laws.Common;
using Sightglass.Network.Stores;
using Sightglass.Network.Tests.Probes;

namespace Sightglass.Network.Tests.Stores;

public sealed class DipTableTankTests
{
    private const double Density = 840;

    [Fact]
    public void Level_AtEveryRow_IsTheRows()
    {
        (double Volume, double Height)[] table = [(0, 0), (0.1, 0.2), (0.5, 0.4), (0.6, 0.8)];
        Assert.All(table[..^1], row => Assert.Equal(row.Height, Level(table, row.Volume), 1e-12));
    }

    [Fact]
    public void Level_BetweenTwoRows_IsStraight() => Assert.Equal(0.25, Level([(0, 0), (2, 1)], 0.5), 1e-12);

    /// <summary>A row is never left by more than its neighbours: the curve has no waves of its own.</summary>
    [Fact]
    public void Level_BetweenRows_StaysBetweenTheirs() =>
        Gen.Select(Draw.Decades(0.01, 1), Draw.Decades(0.01, 1)).Array[2, DipTableTank.Rows - 1].Holds(steps =>
        {
            List<(double Volume, double Height)> table = [(0, 0)];
            foreach ((double volume, double height) in steps) table.Add((table[^1].Volume + volume, table[^1].Height + height));
            for (int i = 1; i < table.Count; i++)
            {
                double level = Level(table, (table[i].Volume + table[i - 1].Volume) / 2);
                Assert.InRange(level, table[i - 1].Height, table[i].Height);
            }
        });

    /// <summary>A parabola h = V² from nine points: cubics with limited slopes miss it by less than a thousandth of full height.</summary>
    [Fact]
    public void Level_OfASmoothTank_IsCloseToIt()
    {
        (double, double)[] table = [.. Enumerable.Range(0, 9).Select(i => (i / 8.0, Math.Pow((i / 8.0) + 0.2, 2)))];
        for (int i = 0; i < 100; i++) Assert.Equal(Math.Pow((i / 100.0) + 0.2, 2), Level(table, i / 100.0), 2e-3);
    }

    [Theory]
    [InlineData(0.0, 0.0, 0.0, 1.0)]
    [InlineData(0.0, 0.0, 1.0, 0.0)]
    [InlineData(1.0, 0.0, 0.0, 1.0)]
    public void ParametersOf_ATableThatDoesNotRise_IsRefused(double v0, double h0, double v1, double h1) =>
        Assert.Throws<ArgumentException>(() => DipTableTank.ParametersOf([(v0, h0), (v1, h1)], Density));

    [Fact]
    public void ParametersOf_TooManyRows_IsRefused() =>
        Assert.Throws<ArgumentException>(() => DipTableTank.ParametersOf([.. Enumerable.Range(0, 25).Select(i => ((double)i, (double)i))], Density));

    private static double Level(IReadOnlyList<(double, double)> table, double volume) =>
        (StoreProbe.Potential<DipTableTank>(volume * Density, DipTableTank.ParametersOf(table, Density)) - Physical.Atmosphere) / (Density * Physical.Gravity);
}
