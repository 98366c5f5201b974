using Sightglass.Basics.Quantities;

namespace Sightglass.Plant.Calculators.Sheets;

/// <summary>A value as it was put in.</summary>
/// <param name="Text">As it is written: <c>79 mph</c>.</param>
/// <param name="Value">SI, with the unit in which it was written; of a choice its place.</param>
public readonly record struct CalculatorGiven(string Text, Quantity Value);
