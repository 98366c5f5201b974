namespace Sightglass.Network.Springs;

/// <summary>What can be wrong with bodies on springs and their inputs.</summary>
public enum StandFindingKind
{
    /// <summary>Nothing keeps the body named from moving.</summary>
    Falls,

    /// <summary>The spring named carries nothing: what it should carry has lifted off.</summary>
    Lifted,

    /// <summary>The input named is no finite number: it counts as 0.</summary>
    NotFinite,
}
