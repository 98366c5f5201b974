namespace Sightglass.Network.Springs;

/// <summary>A rigid body that rests on springs.</summary>
public readonly record struct Body(int Index);
