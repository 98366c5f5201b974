namespace Sightglass.Network.Compile;

/// <summary>A path as built: where its parameters start.</summary>
public readonly record struct PathHandle(int Index, int FirstParameter);
