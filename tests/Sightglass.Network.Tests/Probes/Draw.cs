using CsCheck;

namespace Sightglass.Network.Tests.Probes;

/// <summary>Draws for the arguments of laws and stores.</summary>
public static class Draw
{
    /// <summary>Between two numbers above zero, evenly by orders of magnitude.</summary>
    public static Gen<double> Decades(double from, double to) =>
        Gen.Double[Math.Log(from), Math.Log(to)].Select(x => Math.Clamp(Math.Exp(x), from, to));

    /// <summary>A difference of either sign, from a millionth of the greatest up, or none at all.</summary>
    public static Gen<double> Difference(double greatest) =>
        Gen.Select(Decades(greatest * 1e-9, greatest), Gen.Int[-3, 3], (x, sign) => x * Math.Sign(sign));

    /// <summary>Two pressures, often close to each other, never below zero.</summary>
    public static Gen<double[]> Pressures(double greatest = 1e6) =>
        Gen.Select(Gen.Double[0, greatest], Difference(greatest), (p, d) => new[] { p, Math.Max(0, p + d) });

    /// <summary>Rows of numbers behind one another.</summary>
    public static Gen<double[]> Row(params Gen<double>[] numbers) =>
        numbers.Aggregate(Gen.Const(Array.Empty<double>()), (row, next) => Gen.Select(row, next, (r, n) => (double[])[.. r, n]));

    public static Gen<LawInputs> Inputs(Gen<double[]> potentials, Gen<double[]> parameters, Gen<double[]> inputs) =>
        Gen.Select(potentials, parameters, inputs, (p, k, u) => new LawInputs(p, k, u));
}
