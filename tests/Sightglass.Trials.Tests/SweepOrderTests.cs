using Sightglass.Trials.Sweep;
using Sightglass.World.Runs;

namespace Sightglass.Trials.Tests;

/// <summary>An outcome depends on nothing but setup, seed and case.</summary>
public sealed class SweepOrderTests
{
    [Theory]
    [InlineData("empty-a-leaking-compartment", "leaking compartment")]
    [InlineData("prime-a-starved-engine", "starving engine")]
    [InlineData("leak-with-the-engine-stopped", "leak with the engine stopped")]
    public void Run_256CasesInAnyWay_SameOutcomes(string card, string situation)
    {
        TrialSetup setup = SweepTests.Setup(card, situation);
        SweepOptions options = new() { Cases = 256, Threads = 1 };
        Outcome[] forwards = CaseSweep.Run(setup, options);
        Assert.All(forwards, o => Assert.NotEqual(OutcomeKind.Undecided, o.Kind));
        Assert.Equal(256, forwards.Select(o => o.Hash).Distinct().Count());
        Assert.Equal(forwards, CaseSweep.Run(setup, options with { Backwards = true }));
        Assert.Equal(forwards, CaseSweep.Run(setup, options with { Threads = 2 }));
        Assert.Equal(forwards[100..140], CaseSweep.Run(setup, options with { Cases = 40, FirstCase = 100 }));
        Random chance = new(5);
        foreach (int alone in Enumerable.Range(0, 12).Select(_ => chance.Next(256)))
        {
            Assert.Equal(forwards[alone], CaseStory.End(setup, new(1, (ulong)alone)));
        }
    }

    [Fact]
    public void Run_AnotherSeed_OtherOutcomes()
    {
        TrialSetup setup = SweepTests.Setup("empty-a-leaking-compartment", "leaking compartment");
        SweepOptions options = new() { Cases = 8, Threads = 1 };
        Assert.Empty(CaseSweep.Run(setup, options).Select(o => o.Hash).Intersect(CaseSweep.Run(setup, options with { Seed = 2 }).Select(o => o.Hash)));
    }
}
