namespace Sightglass.Network.Phasors;

/// <summary>Up to four wires side by side between two places, or a transformer.</summary>
public readonly record struct Line(int Index);
