using System.Collections.Immutable;

namespace Sightglass.Plant.Calculators.Sheets;

/// <summary>Calculators of one subject.</summary>
public sealed record CalculatorGroup(string Name, ImmutableArray<CalculatorSheet> Sheets);
