using Sightglass.Reference.Tests.Networks;
using Sightglass.Reference.Tests.Runs;

namespace Sightglass.Reference.Tests;

/// <summary>The kernel on networks that an independent integrator has solved; sources and tolerances: Data/README.md.</summary>
public sealed class KernelTests(ITestOutputHelper output)
{
    private const double RelativeTolerance = 1e-5;

    public static TheoryData<string> Trains() => [.. ReferenceData.Cases("train")];

    public static TheoryData<string> Fuels() => [.. ReferenceData.Cases("fuel")];

    public static TheoryData<string> Cylinders() => [.. ReferenceData.Cases("cylinders")];

    [Theory]
    [MemberData(nameof(Cylinders))]
    public void Run_OfLyingCylinders_GivesTheReferenceLevels(string name)
    {
        using CylinderRun run = new(ReferenceData.Cylinders(name), 1e-6);
        double before = run.Sum;
        ReferenceComparison c = ReferenceComparison.Between(ReferenceData.Solution("cylinders", name), run.Sample());
        output.WriteLine($"{name}: {c}");
        Assert.True(c.IsWithin(rms: 1e-5, percentile999: 1e-5, worst: 1e-5), c.ToString());
        Assert.Equal(before, run.Sum, 1e-12);
    }

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

    /// <summary>One coefficient off by 1 % is seen: the tolerances are not so wide that anything passes.</summary>
    [Theory]
    [InlineData("train", OrificeKind.Plain)]
    [InlineData("train", OrificeKind.Check)]
    [InlineData("train", OrificeKind.Controlled)]
    [InlineData("fuel", null)]
    public void Run_WithCoefficientsOnePercentLarger_LeavesTheTolerance(string area, OrificeKind? kind)
    {
        NetFile file = ReferenceData.Net(area, area + "-00");
        ReferenceNetwork network = ReferenceNetwork.Of(file with
        {
            Orifices = [.. file.Orifices.Select(o => o.Kind == kind ? o with { C = o.C * 1.01 } : o)],
            Heads = [.. file.Heads.Select(h => h with { K = h.K * 1.01 })],
        });
        using ReferenceRun run = new(network, RelativeTolerance);
        ReferenceComparison c = ReferenceComparison.Between(ReferenceData.Solution(area, area + "-00"), run.Sample());
        Assert.False(c.IsWithin(rms: 2e-4, percentile999: 1e-3, worst: 2e-2), c.ToString());
    }

    [Theory]
    [InlineData("train", "train-00")]
    [InlineData("fuel", "fuel-03")]
    public void Run_WithTheOutsideBooked_KeepsTheSum(string area, string name)
    {
        ReferenceNetwork network = ReferenceNetwork.Of(ReferenceData.Net(area, name));
        using ReferenceRun run = new(network, RelativeTolerance);
        double before = network.Sum(run.Group);
        run.Run(1);

        // Rounding only: the flows are some hundred times what is held.
        Assert.Equal(before, network.Sum(run.Group), 1e-13 * network.Scale(run.Group));
    }

    [Fact]
    public void Run_AmongOthers_GivesTheBitsOfARunAlone()
    {
        ReferenceNetwork network = ReferenceNetwork.Of(ReferenceData.Net("fuel", "fuel-02"));
        using ReferenceRun alone = new(network, RelativeTolerance);
        alone.Run(1);
        using ReferenceRun crowd = new(network, RelativeTolerance);
        int lane = -1;
        crowd.Run(8, (l, scenario) =>
        {
            lane = scenario == 7 ? l : lane;
            if (scenario != 7)
            {
                crowd.Group.SetAmount(l, network.Nodes[0], 10 * (scenario + 1));
            }
        });
        Assert.Equal(
            network.Nodes.Select(n => BitConverter.DoubleToInt64Bits(alone.Group.GetAmount(0, n))),
            network.Nodes.Select(n => BitConverter.DoubleToInt64Bits(crowd.Group.GetAmount(lane, n))));
    }

    /// <summary>In this variation an attempt to land on a switch is refused for its error though a longer one was not.</summary>
    [Fact]
    public void Run_WhereALandingIsRefused_ReachesTheEnd()
    {
        ReferenceNetwork network = ReferenceNetwork.Of(ReferenceData.Net("train", "train-00"));
        using ReferenceRun run = new(network, RelativeTolerance);
        run.Run(1, (lane, _) => LaneVariation.Apply(network, run.Group, lane, 289));
        Assert.Equal(network.File.End, run.Group.Time(0).Seconds);
        Assert.InRange(run.Group.Attempts(0), 1, 3000);
    }

    private ReferenceComparison Compare(string area, string name)
    {
        using ReferenceRun run = new(ReferenceNetwork.Of(ReferenceData.Net(area, name)), RelativeTolerance);
        ReferenceComparison c = ReferenceComparison.Between(ReferenceData.Solution(area, name), run.Sample());
        output.WriteLine($"{name}: {c}; {run.Group.Steps(0)} steps, {run.Group.Attempts(0)} attempts");
        return c;
    }
}
