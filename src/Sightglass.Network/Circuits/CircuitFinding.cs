namespace Sightglass.Network.Circuits;

/// <summary>Something that is wrong with a circuit as it stands.</summary>
/// <param name="Name">Of the node, input or coil; empty where the whole circuit is meant.</param>
public readonly record struct CircuitFinding(CircuitFindingKind Kind, string Name);
