using Sightglass.Reference.Tests.Networks;
using Sightglass.Reference.Tests.Runs;

namespace Sightglass.Reference.Tests;

/// <summary>The kernel on networks that an independent integrator has solved; sources and tolerances: Data/README.md.</summary>
public sealed class KernelTests(ITestOutputHelper output)
{
    private const double RelativeTolerance = 1e-5;

    public static TheoryData<string> Trains() => [.. ReferenceData.Cases("train")];

    public static TheoryData<string> Fuels() => [.. ReferenceData.Cases("fuel")];

    [Theory]
    [MemberData(nameof(Trains))]
    public void Run_OfATrain_GivesTheReferencePressures(string name)
    {
        ReferenceComparison c = Compare("train", name);
        Assert.True(c.IsWithin(rms: 1e-4, percentile999: 1e-3, worst: 2e-2), c.ToString());
    }

    [Theory]
    [MemberData(nameof(Fuels))]
    public void Run_OfAFuelSystem_GivesTheReferenceLevels(string name)
    {
        ReferenceComparison c = Compare("fuel", name);
        Assert.True(c.IsWithin(rms: 2e-4, percentile999: 1e-3, worst: 2e-2), c.ToString());
    }

    private ReferenceComparison Compare(string area, string name)
    {
        using ReferenceRun run = new(ReferenceNetwork.Of(ReferenceData.Net(area, name)), RelativeTolerance);
        ReferenceComparison c = ReferenceComparison.Between(ReferenceData.Solution(area, name), run.Sample());
        output.WriteLine($"{name}: {c}; {run.Group.Steps(0)} steps, {run.Group.Attempts(0)} attempts");
        return c;
    }
}
