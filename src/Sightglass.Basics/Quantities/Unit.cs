namespace Sightglass.Basics.Quantities;

/// <summary>
/// A unit of measure: SI value = value·<paramref name="Factor"/> + <paramref name="Offset"/>.
/// Gauge pressures (<c>psi</c>, <c>bar</c>, <c>kPa</c>) carry no offset: what a value is measured from is said by the parameter
/// that takes it; <c>psia</c> and <c>bar abs</c> are absolute and refused where a gauge pressure is wanted.
/// </summary>
public sealed record Unit(string Symbol, Dimension Dimension, double Factor, double Offset = 0)
{
    /// <summary>True for pressures measured from vacuum by their very name: <c>psia</c>, <c>bar abs</c>.</summary>
    public bool IsAbsolute { get; init; }

    /// <summary>True for scales whose zero is not nothing: <c>degC</c>, <c>degF</c>. They name a point, not a difference.</summary>
    public bool IsScale => Offset != 0;

    public double ToSi(double value) => (value * Factor) + Offset;

    public double FromSi(double si) => (si - Offset) / Factor;

    public override string ToString() => Symbol;
}
