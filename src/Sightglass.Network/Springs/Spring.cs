namespace Sightglass.Network.Springs;

/// <summary>What carries a body at a point: a spring, a pad, a stop.</summary>
public readonly record struct Spring(int Index);
