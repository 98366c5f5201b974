using Sightglass.Trials.Sweep;

namespace Sightglass.Trials.Tests;

/// <summary>A case of a sweep runs in memory that was there before: names, draws and margins are settled once, texts are made for a case that is told.</summary>
public sealed class SweepAllocationTests
{
    private const int Cases = 192;

    /// <summary>
    /// Counted by the runtime, so no matter of time. The first three quarters of a thread's cases warm up, until each of its eight lanes has come by every step; the rest may allocate nothing. Code that has not been
    /// compiled for speed yet may put a number in a box: the sweep is repeated until the runtime has come so far; what the program itself
    /// allocates would be there every time.
    /// </summary>
    [Theory]
    [InlineData("empty-a-leaking-compartment", "leaking compartment")]
    [InlineData("prime-a-starved-engine", "starving engine")]
    [InlineData("true-quantity", "gauges disagree")]
    public void Run_AfterWarmUp_NoBytesACase(string card, string situation)
    {
        TrialSetup setup = SweepTests.Setup(card, situation);
        long[] allocated = new long[Cases + 1];
        long least = long.MaxValue;
        for (int i = 0; i < 40 && least > 0; i++)
        {
            CaseSweep.Run(setup, new() { Cases = Cases, Threads = 1, Progress = done => allocated[done] = GC.GetAllocatedBytesForCurrentThread() });
            least = Math.Min(least, allocated[Cases] - allocated[Cases * 3 / 4]);
        }

        Assert.Equal(0, least);
    }
}
