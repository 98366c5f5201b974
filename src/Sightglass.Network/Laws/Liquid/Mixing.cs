using Sightglass.Network.Laws.Common;

namespace Sightglass.Network.Laws.Liquid;

/// <summary>What the paths of liquid and air have in common.</summary>
public static class Mixing
{
    /// <summary>Usual blend flow, kg/s: 0.4 L/h of oil.</summary>
    public const double BlendFlow = 1e-4;

    /// <summary>1/(2·blend flow), s/kg.</summary>
    /// <param name="blendFlow">kg/s, above 0.</param>
    public static double PerBlend(double blendFlow)
    {
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(blendFlow);
        return 0.5 / blendFlow;
    }

    /// <summary>1/(ρ·R·T): kg of air a kg/s of liquid's volume carries for each pascal.</summary>
    /// <param name="density">Of the liquid, kg/m³.</param>
    /// <param name="temperature">K.</param>
    public static double AirPerPascal(double density, double temperature = Physical.ReferenceAirTemperature) =>
        1 / (density * Physical.AirGasConstant * temperature);
}
