using System.Collections.Immutable;
using Sightglass.Basics.Language;

namespace Sightglass.Plant.Calculators.Sheets;

/// <summary>All calculators, in the order in which they are listed.</summary>
public static class CalculatorLibrary
{
    public static ImmutableArray<CalculatorGroup> Groups { get; } =
    [
        new("fuel", [.. FuelSheets.All, .. TankSheets.All]),
        new("air", AirSheets.All),
        new("brakes", HoldingSheets.All),
        new("running", RunningSheets.All),
        new("weight", WeightSheets.All),
        new("electricity", ElectricSheets.All),
        new("sound and light", SenseSheets.All),
    ];

    public static ImmutableArray<CalculatorSheet> All { get; } = [.. Groups.SelectMany(g => g.Sheets)];

    /// <summary>A calculator by its name, in English or in the language that is spoken, or null.</summary>
    public static CalculatorSheet? Find(string name) => All.FirstOrDefault(c => c.Name == name) ?? All.FirstOrDefault(c => CalculatorWord.Of(c.Name) == name);
}
