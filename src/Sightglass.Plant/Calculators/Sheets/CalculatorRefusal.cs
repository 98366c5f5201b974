namespace Sightglass.Plant.Calculators.Sheets;

/// <summary>Why a calculator gives nothing.</summary>
/// <param name="Input">Name of the input that is missing or wrong; null where the values have no answer together.</param>
/// <param name="Sentence">What is wrong and what would be right, in the language that is spoken.</param>
public sealed record CalculatorRefusal(string? Input, string Sentence);
