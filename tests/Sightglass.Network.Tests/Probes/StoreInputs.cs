namespace Sightglass.Network.Tests.Probes;

/// <summary>One set of arguments of a store.</summary>
public sealed record StoreInputs(double[] Amounts, double[] Parameters)
{
    public override string ToString() => $"m [{string.Join(", ", Amounts.Select(v => v.ToString("R")))}] k [{string.Join(", ", Parameters.Select(v => v.ToString("R")))}]";

    /// <summary>The same with one amount replaced.</summary>
    public StoreInputs With(int amount, double value)
    {
        double[] m = [.. Amounts];
        m[amount] = value;
        return this with { Amounts = m };
    }
}
