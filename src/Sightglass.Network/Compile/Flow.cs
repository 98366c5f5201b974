namespace Sightglass.Network.Compile;

/// <summary>What one flow of a path takes from and gives to.</summary>
public readonly record struct Flow(Amount From, Amount To);
