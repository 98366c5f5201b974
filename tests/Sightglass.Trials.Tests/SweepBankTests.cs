using Sightglass.Trials.Sweep;
using Sightglass.World.Runs;

namespace Sightglass.Trials.Tests;

/// <summary>Many cases are run in several banks of lanes, whose networks take their attempts together; a few at a time in one.</summary>
public sealed class SweepBankTests
{
    [Theory]
    [InlineData("empty-a-leaking-compartment", "leaking compartment")]
    [InlineData("find-a-ground", "a ground on the positive side")]
    public void Run_ManyCases_OutcomesOfFewAtATime(string card, string situation)
    {
        const int Cases = 400, Few = 40;
        TrialSetup setup = SweepTests.Setup(card, situation);
        SweepOptions options = new() { Cases = Cases, Threads = 1 };
        Outcome[] many = CaseSweep.Run(setup, options);
        Assert.True(CaseSweep.BanksFor(setup, options) > 1 && CaseSweep.BanksFor(setup, options with { Cases = Few }) == 1);
        for (int first = 0; first < Cases; first += Few)
        {
            Assert.Equal(many[first..(first + Few)], CaseSweep.Run(setup, options with { Cases = Few, FirstCase = first }));
        }
    }
}
