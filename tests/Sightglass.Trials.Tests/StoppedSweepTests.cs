using Sightglass.Basics.Statistics;
using Sightglass.Trials.Results;
using Sightglass.Trials.Sweep;
using Sightglass.World.Runs;

namespace Sightglass.Trials.Tests;

/// <summary>
/// A trial that is stopped keeps the first cases in turn, whatever they took: were the long ones under way left out, the bound would be about short cases.
/// </summary>
public sealed class StoppedSweepTests
{
    private const int Cases = 4000;

    [Theory]
    [InlineData(1, false, 3)]
    [InlineData(1, true, 70)]
    [InlineData(2, false, 70)]
    [InlineData(2, true, 200)]
    public void Run_Stopped_TheFirstCasesInTurnAndNoOthers(int threads, bool backwards, int stopAfter)
    {
        TrialSetup setup = SweepTests.Setup("empty-a-leaking-compartment-draft", "leaking compartment");
        using CancellationTokenSource stop = new();
        SweepOptions options = new() { Cases = Cases, Threads = threads, Backwards = backwards };
        Outcome[] kept = CaseSweep.Run(setup, options with { Progress = done => StopAt(done, stopAfter, stop) }, stop.Token);
        int ended = kept.Count(o => o.Kind != OutcomeKind.Running);
        Assert.InRange(ended, stopAfter, stopAfter + (threads * setup.Machines.Length * 8 * 4));
        Outcome[] inTurn = backwards ? [.. kept.Reverse()] : kept;
        Assert.All(inTurn[..ended], o => Assert.NotEqual(OutcomeKind.Running, o.Kind));
        Outcome[] first = CaseSweep.Run(setup, options with { Cases = ended, FirstCase = backwards ? Cases - ended : 0 });
        Assert.Equal(first, backwards ? kept[^ended..] : kept[..ended]);
        TrialResult result = new(setup, options, [.. kept]);
        Assert.True(result.StoppedEarly);
        Assert.Equal((ended, Cases - ended), (result.Applicable, result.NotRun));
        Assert.Equal(AnytimeBound.Lower(result.Done + result.Stopped, ended, TrialResult.Confidence), result.LowerBound);
    }

    [Fact]
    public void Run_StoppedBeforehand_BeginsNoCase()
    {
        TrialSetup setup = SweepTests.Setup("empty-a-leaking-compartment", "leaking compartment");
        SweepOptions options = new() { Cases = 64, Threads = 2 };
        TrialResult result = new(setup, options, [.. CaseSweep.Run(setup, options, new CancellationToken(canceled: true))]);
        Assert.Equal(64, result.NotRun);
        Assert.Null(result.LowerBound);
    }

    private static void StopAt(int done, int after, CancellationTokenSource stop)
    {
        if (done >= after)
        {
            stop.Cancel();
        }
    }
}
