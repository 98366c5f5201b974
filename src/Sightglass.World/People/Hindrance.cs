namespace Sightglass.World.People;

/// <summary>Why somebody cannot begin something.</summary>
public enum Hindrance
{
    None,

    /// <summary>There is no such person.</summary>
    Nobody,

    /// <summary>They are on the way, or at something else.</summary>
    Busy,

    /// <summary>It is not within reach from where they stand.</summary>
    OutOfReach,

    /// <summary>There is no way for them.</summary>
    NoWay,

    /// <summary>What it needs is not where it is kept.</summary>
    Lacks,

    /// <summary>There is no such thing, or nothing of the kind can be done with it.</summary>
    Impossible,
}
