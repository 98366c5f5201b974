namespace Sightglass.Basics.Quantities;

/// <summary>From one value to another, both in SI, and the unit they were written in. From is never above To.</summary>
public readonly record struct QuantityRange(double From, double To, Unit Unit)
{
    public Dimension Dimension => Unit.Dimension;

    /// <summary>True for a single value.</summary>
    public bool IsFixed => From == To;

    /// <summary>True for values in the range, ends included.</summary>
    public bool Contains(double si) => si >= From && si <= To;
}
