using Sightglass.Trials.Sweep;
using Sightglass.World.Runs;

namespace Sightglass.Trials.Tests;

/// <summary>An outcome depends on nothing but setup, seed and case. Of 64 cases on four machines each lane gets about two, so that each is refilled.</summary>
public sealed class SweepOrderTests
{
    [Theory]
    [InlineData("empty-a-leaking-compartment", "leaking compartment", 64)]
    [InlineData("prime-a-starved-engine", "starving engine", 64)]
    [InlineData("leak-with-the-engine-stopped", "leak with the engine stopped", 64)]
    [InlineData("brake-pipe-leakage-test", "brake pipe may leak", 64)]
    [InlineData("couple-the-air-of-a-train", "engine change", 32)]
    [InlineData("brake-test-of-the-train", "before departure", 32)]
    [InlineData("find-a-ground", "a ground on the positive side", 32)]
    [InlineData("test-the-cab-signals", "cab signals before departure", 32)]
    [InlineData("axle-box-is-warm", "stopped for a warm axle box", 32)]
    [InlineData("part-the-couplers", "machine about to leave its train", 16, 8)]
    [InlineData("one-side-of-head-end-power", "one side of head-end power lost", 8, 4)]
    public void Run_CasesInAnyWay_SameOutcomes(string card, string situation, int cases, int different = 0)
    {
        TrialSetup setup = SweepTests.Setup(card, situation);
        SweepOptions options = new() { Cases = cases, Threads = 1 };
        Outcome[] forwards = CaseSweep.Run(setup, options);
        Assert.All(forwards, o => Assert.NotEqual(OutcomeKind.Undecided, o.Kind));
        Assert.InRange(forwards.Select(o => o.Hash).Distinct().Count(), different > 0 ? different : cases, cases); // where positions alone are drawn two cases can be the same one
        Assert.Equal(forwards, CaseSweep.Run(setup, options with { Backwards = true }));
        Assert.Equal(forwards, CaseSweep.Run(setup, options with { Threads = 2 }));
        Assert.Equal(forwards[(cases / 3)..(cases / 2)], CaseSweep.Run(setup, options with { Cases = (cases / 2) - (cases / 3), FirstCase = cases / 3 }));
        Random chance = new(5);
        foreach (int alone in Enumerable.Range(0, Math.Min(12, cases / 8)).Select(_ => chance.Next(cases)))
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
