namespace Sightglass.Drawing.Lanes;

/// <summary>One of the rows of a <see cref="LaneChart"/>.</summary>
/// <param name="Name">Said at its left.</param>
/// <param name="IsTruth">Hidden truth: dashed, hatched, violet; its name has to say so.</param>
public abstract record Lane(string Name, bool IsTruth)
{
    /// <summary>Pixels.</summary>
    internal abstract double Height { get; }
}
