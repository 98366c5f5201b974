namespace Sightglass.Network.Compile;

/// <summary>A number set from outside and held between events: an opening, a speed, a demand.</summary>
public readonly record struct Input(int Index);
