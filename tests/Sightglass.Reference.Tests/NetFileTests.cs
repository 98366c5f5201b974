using Sightglass.Reference.Tests.Networks;

namespace Sightglass.Reference.Tests;

public sealed class NetFileTests
{
    public static TheoryData<string, string> Solved() =>
        [.. from area in new[] { "train", "fuel" } from name in ReferenceData.Cases(area) select (area, name)];

    [Theory]
    [MemberData(nameof(Solved))]
    public void Parse_EveryProblem_MatchesItsSolution(string area, string name)
    {
        NetFile net = ReferenceData.Net(area, name);
        SampleTable solution = ReferenceData.Solution(area, name);
        Assert.Equal(net.Nodes.Select(n => n.Name), solution.Columns);
        Assert.Equal((int)Math.Round(net.End / net.Every) + 1, solution.Times.Length);
        Assert.All(net.Nodes.Zip(solution.Rows[0]), pair => Assert.Equal(pair.First.Start, pair.Second, 1e-8));
        Assert.All(net.Controls, c => Assert.InRange(c.D, 0, net.Nodes.Length - 1));
    }

    [Fact]
    public void Solved_Areas_AreAllThere()
    {
        Assert.Equal(8, ReferenceData.Cases("train").Count());
        Assert.Equal(8, ReferenceData.Cases("fuel").Count());
        Assert.Equal(2, ReferenceData.Cases("cylinders").Count());
    }

    [Fact]
    public void Parse_FirstCylinders_HasTheFilesNumbers()
    {
        CylinderFile file = ReferenceData.Cylinders("cylinders-00");
        Assert.Equal(new CylinderRow(0.693, 2.395, 0.125, 0.6686), file.Tanks[1]);
        Assert.Equal(new CylinderOrificeRow(2, -1, -0.2, 7.889e-05), file.Orifices[2]);
        Assert.Equal(new InflowRow(0, 600, 1800, 0.0003139), file.Inflow[0]);
        Assert.Equal((1e-4, 3600, 60), (file.EpsM, file.EndS, file.EveryS));
    }

    [Theory]
    [InlineData("")]
    [InlineData("tend 1 1 node 0")]
    [InlineData("tend 1 1 nodes 1 A x 1")]
    public void Parse_AnotherText_IsRefused(string text) => Assert.Throws<FormatException>(() => NetFile.Parse(text));
}
