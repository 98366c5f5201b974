namespace Sightglass.Network.Phasors;

/// <summary>One wire at one place: a phase or a neutral.</summary>
public readonly record struct Terminal(int Index);
