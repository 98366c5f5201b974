using Sightglass.Trials.Sweep;

namespace Sightglass.Trials.Tests;

/// <summary>A case of a sweep runs in memory that was there before: names, draws and margins are settled once, texts are made for a case that is told.</summary>
public sealed class SweepAllocationTests
{
    /// <summary>
    /// Counted by the runtime, so no matter of time. The first three quarters of a thread's cases warm up, until each of its lanes has come by every step and every text that is said; the rest may allocate nothing. Code that has not been
    /// compiled for speed yet may put a number in a box: the sweep is repeated until the runtime has come so far; what the program itself
    /// allocates would be there every time.
    /// </summary>
    [Theory]
    [InlineData("empty-a-leaking-compartment", "leaking compartment", 192)]
    [InlineData("prime-a-starved-engine", "starving engine", 192)]
    [InlineData("true-quantity", "gauges disagree", 192)]
    [InlineData("charge-from-nothing", "air from nothing", 768)]
    [InlineData("couple-the-air-of-a-train", "engine change", 192)]
    [InlineData("brake-test-of-the-train", "before departure", 384)]
    [InlineData("brake-pipe-leakage-test", "brake pipe may leak", 384)]
    [InlineData("find-a-ground", "a ground on the positive side", 192)]
    [InlineData("axle-box-is-warm", "stopped for a warm axle box", 192)]
    [InlineData("part-the-couplers", "machine about to leave its train", 768)]
    public void Run_AfterWarmUp_NoBytesACase(string card, string situation, int cases)
    {
        TrialSetup setup = SweepTests.Setup(card, situation);
        long[] allocated = new long[cases + 1];
        long least = long.MaxValue;
        for (int i = 0; i < 40 && least > 0; i++)
        {
            CaseSweep.Run(setup, new() { Cases = cases, Threads = 1, Progress = done => allocated[done] = GC.GetAllocatedBytesForCurrentThread() });
            least = Math.Min(least, allocated[cases] - allocated[cases * 3 / 4]);
        }

        Assert.Equal(0, least);
    }
}
