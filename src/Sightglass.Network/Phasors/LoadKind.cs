namespace Sightglass.Network.Phasors;

/// <summary>How what a load draws depends on its voltage.</summary>
public enum LoadKind
{
    /// <summary>The power stays: the current rises as the voltage falls (inverters, motors).</summary>
    Power,

    /// <summary>The current stays, and so does its angle to the voltage.</summary>
    Current,

    /// <summary>The impedance stays: the power falls with the square of the voltage (heaters, lamps, a short).</summary>
    Impedance,
}
