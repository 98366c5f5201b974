namespace Sightglass.Plant.Plans;

/// <summary>Stores that are worked out together, by a vehicle, a system of it and their fluid.</summary>
internal readonly record struct StoreGroup(string Vehicle, string System, Fluid Fluid);
