namespace Sightglass.Network.Phasors;

/// <summary>What draws power between two terminals, or between one and the frame.</summary>
public readonly record struct Load(int Index);
