namespace Sightglass.Network.Springs;

/// <summary>Something that is wrong with bodies on springs as they stand.</summary>
/// <param name="Name">Of the body, spring or input.</param>
public readonly record struct StandFinding(StandFindingKind Kind, string Name);
