namespace Sightglass.Training.Debrief;

/// <summary>What sort of thing decided a drill.</summary>
public enum TurningKind
{
    /// <summary>It is under way: nothing is decided.</summary>
    Open,

    /// <summary>What was wanted last came to be so, and stayed.</summary>
    Settled,

    /// <summary>A critical line was broken.</summary>
    Broken,

    /// <summary>Something critical was never brought about.</summary>
    Missing,

    /// <summary>Every critical line was met, and there were too few points.</summary>
    Points,
}
