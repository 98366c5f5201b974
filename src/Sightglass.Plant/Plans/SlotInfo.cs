namespace Sightglass.Plant.Plans;

/// <summary>A slot's name (for snapshots and messages) and its value when nothing else is said.</summary>
public sealed record SlotInfo(string Name, double Start);
