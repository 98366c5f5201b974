namespace Sightglass.Network.Circuits;

/// <summary>How the coils of a circuit came to rest.</summary>
public enum CircuitOutcome
{
    /// <summary>Every coil is where its voltage wants it.</summary>
    Settled,

    /// <summary>
    /// Every coil is where its voltage wants it, but only because one went first: moved all at once they would never have come to rest. The order of the book decided, in the
    /// machine it is whichever armature is quicker.
    /// </summary>
    Race,

    /// <summary>Some coil's own contacts undo it: it never comes to rest. Voltages are those of one moment of it.</summary>
    Chatter,
}
