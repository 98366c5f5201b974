using Sightglass.Book.Consists;
using Sightglass.Book.Model;

namespace Sightglass.Trials.Consists;

/// <summary>A vehicle of a train that is checked.</summary>
/// <param name="Vehicle">How its parts are called.</param>
/// <param name="Listed">As it was listed.</param>
/// <param name="Class">What describes it.</param>
public sealed record CheckedVehicle(Vehicle Vehicle, ConsistVehicle Listed, ClassBook Class)
{
    /// <summary>kg; null where nobody says it.</summary>
    public double? Mass { get; init; }

    public bool IsMachine => Listed.Listed.IsMachine;

    /// <summary>Whether it is a machine that is not hauled dead.</summary>
    public bool IsLive => IsMachine && !Listed.IsDead;

    public int Axles => Class.Hauling?.Axles ?? 4;

    /// <summary>The end that faces the rear of the train, or its head; null where it has none there.</summary>
    public CouplingEnd? End(bool rear) => Class.Ends.Values.Where(e => e.Faces == (rear != Listed.Listed.IsTurned ? Side.Rear : Side.Front)).OrderBy(e => e.Span).FirstOrDefault();
}
