using System.Collections.Immutable;

namespace Sightglass.World.Hauls;

/// <summary>The fuel of a machine during a run.</summary>
/// <param name="Unit">Which, counted from the head.</param>
/// <param name="GivesHeadEnd">Whether its engine turns the source for the cars.</param>
/// <param name="Seconds">Moments since the start, rising from 0.</param>
/// <param name="Compartments">In the order of the book.</param>
/// <param name="Burnt">m³ by its engine, one for each moment.</param>
/// <param name="StoppedAt">s at which its engine stopped for want of fuel; null where it went on.</param>
/// <param name="Density">kg/m³.</param>
public sealed record UnitFuel(int Unit, bool GivesHeadEnd, ImmutableArray<double> Seconds, ImmutableArray<CompartmentFuel> Compartments, ImmutableArray<double> Burnt, double? StoppedAt, double Density)
{
    /// <summary>m³ at the start.</summary>
    public double Start => Total(0);

    /// <summary>m³ at the end.</summary>
    public double End => Total(Seconds.Length - 1);

    /// <summary>m³ in all its compartments at a moment.</summary>
    public double Total(int moment) => Compartments.Sum(c => c.Volumes[moment]);

    /// <summary>s at which a margin is reached; null where it is not.</summary>
    /// <param name="margin">m³.</param>
    public double? ReachesAt(double margin) => Enumerable.Range(0, Seconds.Length).Where(i => Total(i) < margin).Select(i => (double?)Seconds[i]).FirstOrDefault();
}
