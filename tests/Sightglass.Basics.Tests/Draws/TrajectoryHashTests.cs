using Sightglass.Basics.Draws;

namespace Sightglass.Basics.Tests.Draws;

public sealed class TrajectoryHashTests
{
    /// <summary>A number added to nothing is mixed as SplitMix64 mixes its state: its first three outputs from seed 0 (Vigna's splitmix64.c, from memory).</summary>
    [Fact]
    public void Add_ToZero_IsAStepOfSplitMix64()
    {
        ulong state = 0;
        foreach (ulong output in new[] { 0xE220A8397B1DCDAFUL, 0x6E789E6AA1B965F4UL, 0x06C45D188009454FUL })
        {
            Assert.Equal(output, TrajectoryHash.Add(state, 0L));
            state += 0x9E3779B97F4A7C15;
        }
    }

    [Fact]
    public void Add_ADouble_TakesItsBits() => Assert.NotEqual(TrajectoryHash.Add(TrajectoryHash.Start, 0.0), TrajectoryHash.Add(TrajectoryHash.Start, -0.0));

    [Fact]
    public void Add_OtherOrder_OtherHash() =>
        Assert.NotEqual(TrajectoryHash.Add(TrajectoryHash.Add(TrajectoryHash.Start, 1L), 2L), TrajectoryHash.Add(TrajectoryHash.Add(TrajectoryHash.Start, 2L), 1L));

    /// <summary>Each of the 64 bits of a number turns about half of the hash over: 32 ± 4 of 64 on average over 64 bits (five standard deviations of the mean are 2.5).</summary>
    [Fact]
    public void Add_OneBitTurned_TurnsHalfTheHash()
    {
        ulong whole = TrajectoryHash.Add(TrajectoryHash.Start, 1.0);
        long bits = BitConverter.DoubleToInt64Bits(1.0);
        double mean = Enumerable.Range(0, 64).Average(b => System.Numerics.BitOperations.PopCount(whole ^ TrajectoryHash.Add(TrajectoryHash.Start, bits ^ (1L << b))));
        Assert.InRange(mean, 28, 36);
    }
}
