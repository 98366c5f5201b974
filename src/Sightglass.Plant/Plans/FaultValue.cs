namespace Sightglass.Plant.Plans;

/// <summary>One value of a fault: its name, where it is kept, and what it is where nothing is said (SI).</summary>
public sealed record FaultValue(string Name, Slot Slot, double Usual);
