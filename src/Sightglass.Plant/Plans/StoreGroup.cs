namespace Sightglass.Plant.Plans;

/// <summary>Stores that are worked out together, by a system of theirs and their fluid.</summary>
internal readonly record struct StoreGroup(string System, Fluid Fluid);
