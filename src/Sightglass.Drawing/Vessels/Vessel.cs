namespace Sightglass.Drawing.Vessels;

/// <summary>A store with what is really in it.</summary>
/// <param name="Name">Below it.</param>
/// <param name="Share">0…1.</param>
/// <param name="Says">The number, with its unit.</param>
public sealed record Vessel(string Name, double Share, string Says);
