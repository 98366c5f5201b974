namespace Sightglass.Basics.Quantities;

/// <summary>A number in SI units with its dimension and the unit it was written in.</summary>
/// <param name="Si">Value in SI base units.</param>
/// <param name="Unit">The unit it was written in, used again for showing it.</param>
public readonly record struct Quantity(double Si, Unit Unit)
{
    public Dimension Dimension => Unit.Dimension;

    /// <summary>The value in the unit it was written in.</summary>
    public double Value => Unit.FromSi(Si);
}
