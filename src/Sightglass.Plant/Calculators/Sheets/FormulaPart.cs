namespace Sightglass.Plant.Calculators.Sheets;

/// <summary>A stretch of a formula with the values put in.</summary>
/// <param name="IsValue">Whether it stands in place of a name.</param>
public readonly record struct FormulaPart(string Text, bool IsValue);
