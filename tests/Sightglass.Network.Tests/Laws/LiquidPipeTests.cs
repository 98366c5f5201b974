using CsCheck;
using Sightglass.Network.Laws.Liquid;
using Sightglass.Network.Tests.Probes;

namespace Sightglass.Network.Tests.Laws;

/// <summary>Against the same formulas solved here for the pressure difference, with the library's logarithm.</summary>
public sealed class LiquidPipeTests
{
    private const double Density = 840;

    [Fact]
    public void Flow_Turbulent_IsColebrooks() =>
        Gen.Select(Pipes, Draw.Decades(4000, 1e7)).Holds(
            (pipe, reynolds) =>
            {
                double x = 7;
                for (int i = 0; i < 50; i++) x = -2 * Math.Log10((pipe.Roughness / 3.7) + (2.51 * x / reynolds));
                CheckFlow(pipe, reynolds, 1 / (x * x), 6e-6);
            });

    [Fact]
    public void Flow_Laminar_IsPoiseuilles() =>
        Gen.Select(Pipes, Draw.Decades(1, 1500)).Holds((pipe, reynolds) => CheckFlow(pipe, reynolds, 64 / reynolds, 1e-12));

    [Fact]
    public void LaminarFlow_InASmoothPipe_LastsToReynolds2000()
    {
        double[] k = LiquidPipe.ParametersOf(0.02, 10, 0, 0, Density, 3e-6);
        double difference = 64.0 / 2000 * 10 / 0.02 * Density / 2 * 0.3 * 0.3;
        Assert.Equal(0.3 * Density * Math.PI / 4 * 4e-4, LawProbe.Flow<LiquidPipe>([difference * 0.9999, 0], k) / 0.9999, 1e-9);
        Assert.Equal(difference, k[3], 1e-9 * difference);
    }

    [Theory]
    [InlineData(0.0, 0.0)]
    [InlineData(0.0, 30.0)]
    [InlineData(0.05, 0.0)]
    [InlineData(0.05, 30.0)]
    public void Flow_ThroughTheTransition_Rises(double roughness, double fittings)
    {
        double[] k = LiquidPipe.ParametersOf(0.02, 2, roughness * 0.02, fittings, Density, 3e-6);
        double last = 0;
        for (double x = k[3] * 0.9; x < k[9] * 1.1; x += (k[9] - k[3]) / 500)
        {
            double flow = LawProbe.Flow<LiquidPipe>([x, 0], k);
            Assert.True(flow > last, $"{flow:R} after {last:R} at {x:R} Pa");
            last = flow;
        }
    }

    /// <summary>Laminar to Re 1550 at least, as the documentation of the sheet says.</summary>
    [Fact]
    public void LaminarFlow_InAnyPipe_LastsToReynolds1550() =>
        Pipes.Holds(pipe => Assert.True(Sheet(pipe)[5] >= 1549.9 * pipe.Viscosity / pipe.Diameter, $"{Sheet(pipe)[5] * pipe.Diameter / pipe.Viscosity}"));

    private static Gen<Pipe> Pipes =>
        from diameter in Draw.Decades(0.004, 0.1)
        from length in Draw.Decades(5, 5000)
        from roughness in Gen.Double[0, 0.0499]
        from fittings in Gen.OneOf(Gen.Const(0.0), Gen.Double[0, 30])
        from viscosity in Draw.Decades(1e-6, 1e-5)
        select new Pipe(diameter, length * diameter, roughness, fittings, viscosity);

    private static double[] Sheet(Pipe pipe) =>
        LiquidPipe.ParametersOf(pipe.Diameter, pipe.Length, pipe.Roughness * pipe.Diameter, pipe.Fittings, Density, pipe.Viscosity);

    private static void CheckFlow(Pipe pipe, double reynolds, double friction, double tolerance)
    {
        double speed = reynolds * pipe.Viscosity / pipe.Diameter;
        double difference = ((friction * pipe.Length / pipe.Diameter) + pipe.Fittings) * Density * speed * speed / 2;
        double expected = speed * Density * Math.PI / 4 * pipe.Diameter * pipe.Diameter;
        Assert.Equal(expected, LawProbe.Flow<LiquidPipe>([difference, 0], Sheet(pipe)), tolerance * expected);
        Assert.Equal(-expected, LawProbe.Flow<LiquidPipe>([0, difference], Sheet(pipe)), tolerance * expected);
    }

    /// <param name="Roughness">By diameter.</param>
    private sealed record Pipe(double Diameter, double Length, double Roughness, double Fittings, double Viscosity);
}
