namespace Sightglass.Drawing.Loads;

/// <summary>One wheel of an axle.</summary>
/// <param name="Axle">Its item.</param>
/// <param name="IsRight">On the right of its own vehicle.</param>
public readonly record struct LoadWheel(string Axle, bool IsRight);
