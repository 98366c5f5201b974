using System.Collections.Immutable;

namespace Sightglass.Plant.Calculators.Sheets;

/// <summary>All calculators, in the order in which they are listed.</summary>
public static class CalculatorLibrary
{
    public static ImmutableArray<CalculatorSheet> All { get; } = [.. FuelSheets.All, .. AirSheets.All, .. HoldingSheets.All, .. RunningSheets.All, .. ElectricSheets.All, .. SenseSheets.All];

    /// <summary>A calculator by its name, or null.</summary>
    public static CalculatorSheet? Find(string name) => All.FirstOrDefault(c => c.Name == name);
}
