using System.Collections.Immutable;

namespace Sightglass.Plant.Plans;

/// <summary>One value of a fault: its name, where it is kept, and what it is where nothing is said (SI).</summary>
public sealed record FaultValue(string Name, Slot Slot, double Usual)
{
    /// <summary>The numbers by which what it names is called, such as the pins of a plug; empty where any number within the limits of its kind will do.</summary>
    public ImmutableArray<double> Known { get; init; } = [];

    /// <summary>Whether something is called by this number.</summary>
    public bool Knows(double number) => Known.IsEmpty || Known.Contains(number);
}
