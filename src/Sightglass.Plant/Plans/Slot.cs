namespace Sightglass.Plant.Plans;

/// <summary>A number that changes at events only: a handle's position, a fault's size, the grade, whether the engine runs.</summary>
public readonly record struct Slot(int Index);
