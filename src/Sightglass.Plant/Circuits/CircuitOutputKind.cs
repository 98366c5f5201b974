namespace Sightglass.Plant.Circuits;

/// <summary>What a circuit tells.</summary>
internal enum CircuitOutputKind
{
    /// <summary>V between two nodes.</summary>
    Voltage,

    /// <summary>A through a branch.</summary>
    Current,

    /// <summary>A of a branch for each V more of its own electromotive force: what a small change does.</summary>
    Slope,

    /// <summary>1 while a branch conducts at all, whatever its coil and its faults say.</summary>
    Made,

    /// <summary>1 while a coil is up, 0 while it is down.</summary>
    Up,

    /// <summary>1 while a coil's own contacts undo it again and again.</summary>
    Chatters,
}
