namespace Sightglass.Network.Phasors;

/// <summary>What can be wrong with a load flow and its inputs.</summary>
public enum FlowFindingKind
{
    /// <summary>No terminal is given a voltage: everything is dead.</summary>
    NoSource,

    /// <summary>The load named is where the voltage fell furthest when it collapsed.</summary>
    Collapse,

    /// <summary>The load named is where the voltage had fallen furthest when the bound was reached.</summary>
    NotSettled,

    /// <summary>The load named is wanted where there is no voltage.</summary>
    Dead,

    /// <summary>The load named has less voltage than it keeps its power or current at: it counts as an impedance.</summary>
    BelowFloor,

    /// <summary>
    /// The load named would keep its power or current on a neutral that nothing but loads holds. That balance falls over, if there is one: it counts as an impedance.
    /// </summary>
    Loose,

    /// <summary>The terminal named is given two voltages that differ: the first holds.</summary>
    Contradiction,

    /// <summary>The input named is no finite number: it counts as 0.</summary>
    NotFinite,
}
