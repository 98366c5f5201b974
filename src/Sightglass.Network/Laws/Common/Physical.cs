namespace Sightglass.Network.Laws.Common;

/// <summary>Constants of nature and of standards that laws and their parameter sheets use.</summary>
public static class Physical
{
    /// <summary>Standard acceleration of free fall, m/s² (3rd CGPM 1901, exact).</summary>
    public const double Gravity = 9.80665;

    /// <summary>Standard atmosphere, Pa (10th CGPM 1954, exact).</summary>
    public const double Atmosphere = 101_325;

    /// <summary>Gas constant of dry air, J/(kg·K) (287.05, as in the International Standard Atmosphere; from memory).</summary>
    public const double AirGasConstant = 287.05;

    /// <summary>Ratio of specific heats of air near room temperature (1.4, any text of thermodynamics).</summary>
    public const double AirHeatRatio = 1.4;

    /// <summary>Density of the reference air of ISO 6358 (1 bar, 293.15 K, 65 % humidity), kg/m³ (from memory).</summary>
    public const double ReferenceAirDensity = 1.185;

    /// <summary>Temperature of the reference air of ISO 6358, K (from memory).</summary>
    public const double ReferenceAirTemperature = 293.15;
}
