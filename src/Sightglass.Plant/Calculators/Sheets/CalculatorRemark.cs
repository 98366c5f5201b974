using System.Collections.Immutable;

namespace Sightglass.Plant.Calculators.Sheets;

/// <summary>What is said of a result where something holds that a person should know.</summary>
/// <param name="Text">In plain words.</param>
/// <param name="Holds">Of the values and the results, SI, in the order of their sheet.</param>
public sealed record CalculatorRemark(string Text, Func<ImmutableArray<double>, ImmutableArray<double>, bool> Holds);
