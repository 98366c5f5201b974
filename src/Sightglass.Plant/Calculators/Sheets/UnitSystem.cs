namespace Sightglass.Plant.Calculators.Sheets;

/// <summary>In which units results are shown.</summary>
public enum UnitSystem
{
    /// <summary>US customary.</summary>
    Us,

    /// <summary>Metric.</summary>
    Si,
}
