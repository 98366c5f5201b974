namespace Sightglass.Network.Phasors;

/// <summary>Something that is wrong with a load flow as it stands.</summary>
/// <param name="Name">Of the load, terminal or input; empty where the whole is meant.</param>
public readonly record struct FlowFinding(FlowFindingKind Kind, string Name);
