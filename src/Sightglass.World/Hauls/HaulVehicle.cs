using Sightglass.Book.Model;

namespace Sightglass.World.Hauls;

/// <summary>A vehicle of a train that runs.</summary>
/// <param name="Vehicle">Its place and its name in the train.</param>
/// <param name="Running">What the book says of it.</param>
/// <param name="Length">m.</param>
/// <param name="Unit">Which machine it is, counted from the head, 1 or more; 0 for a car.</param>
/// <param name="Works">Whether it is a machine that pulls and burns.</param>
public sealed record HaulVehicle(Vehicle Vehicle, Running Running, double Length, int Unit, bool Works)
{
    /// <summary>kg with what is in its tanks at the start.</summary>
    public double Mass { get; init; } = Running.Mass;

    /// <summary>Whether it is hauled with a machine's tanks and does nothing.</summary>
    public bool IsDead => Unit > 0 && !Works;
}
