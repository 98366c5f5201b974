namespace Sightglass.Network.Tests.Probes;

/// <summary>The comparisons themselves notice what they are for.</summary>
public sealed class SlopeTests
{
    [Fact]
    public void Check_SlopeOffByATenThousandth_Fails() =>
        Assert.ThrowsAny<Xunit.Sdk.XunitException>(() => Slope.Check(x => ([x * x], [2.0002 * x]), [3.0], 1e-5, 0));

    [Fact]
    public void Check_TrueSlope_Passes() => Slope.Check(x => ([x * x], [2 * x]), [3.0], 1e-5, 0);

    [Fact]
    public void CheckNoJump_SlopeOfAnEdge_Fails() =>
        Assert.ThrowsAny<Xunit.Sdk.XunitException>(() => Slope.CheckNoJump(t => [t < 0.37 ? 1 : 1.001]));

    [Fact]
    public void CheckNoJump_SteepButContinuousSlope_Passes() => Slope.CheckNoJump(t => [Math.Clamp((t - 0.37) * 1e6, 0, 1)]);
}
