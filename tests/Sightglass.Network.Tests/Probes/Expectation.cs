namespace Sightglass.Network.Tests.Probes;

/// <param name="Tolerance">Relative; absolute where nothing is expected.</param>
public sealed record Expectation(string What, double Actual, double Expected, double Tolerance)
{
    public bool Met => Math.Abs(Actual - Expected) <= Tolerance * (Expected == 0 ? 1 : Math.Abs(Expected));

    public override string ToString() => $"{What}: {Actual:R}, expected {Expected:R} within {Tolerance:R}";
}
