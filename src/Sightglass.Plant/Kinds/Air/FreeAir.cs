using Sightglass.Network.Laws.Common;

namespace Sightglass.Plant.Kinds.Air;

/// <summary>Air as compressed-air people count it: as the volume it has at the pressure of the atmosphere and 20 °C.</summary>
internal static class FreeAir
{
    /// <summary>K: what every air volume is taken to have.</summary>
    public const double Temperature = Physical.ReferenceAirTemperature;

    /// <summary>kg/m³: p/(RT) at one atmosphere and 20 °C, 1.204.</summary>
    public const double Density = Physical.Atmosphere / (Physical.AirGasConstant * Temperature);
}
