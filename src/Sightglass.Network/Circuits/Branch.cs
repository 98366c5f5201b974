namespace Sightglass.Network.Circuits;

/// <summary>What lies between two nodes of a circuit.</summary>
public readonly record struct Branch(int Index);
