namespace Sightglass.Network.Tests.Probes;

/// <summary>One set of arguments of a law.</summary>
public sealed record LawInputs(double[] Potentials, double[] Parameters, double[] Inputs)
{
    public override string ToString() => $"p [{Text(Potentials)}] k [{Text(Parameters)}] u [{Text(Inputs)}]";

    /// <summary>The same with one potential replaced.</summary>
    public LawInputs With(int potential, double value)
    {
        double[] p = [.. Potentials];
        p[potential] = value;
        return this with { Potentials = p };
    }

    private static string Text(double[] values) => string.Join(", ", values.Select(v => v.ToString("R")));
}
