namespace Sightglass.Network.Circuits;

/// <summary>What can be wrong with a circuit and its inputs.</summary>
public enum CircuitFindingKind
{
    /// <summary>Nothing drives a current: no electromotive force, no two potentials that are held.</summary>
    NoSource,

    /// <summary>A part with a source in it is joined to no node whose potential is given: its voltages count from the node named.</summary>
    Floating,

    /// <summary>The potential of the node named is given twice, and not the same: the first holds.</summary>
    Contradiction,

    /// <summary>The input named is no finite number: it counts as 0.</summary>
    NotFinite,

    /// <summary>The coil named is among those of a <see cref="CircuitOutcome.Race"/>.</summary>
    Race,

    /// <summary>The coil named never comes to rest.</summary>
    Chatter,
}
