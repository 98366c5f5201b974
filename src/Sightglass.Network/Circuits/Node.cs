namespace Sightglass.Network.Circuits;

/// <summary>A point of a circuit at which wires meet.</summary>
public readonly record struct Node(int Index);
