namespace Sightglass.Trials.Consists;

/// <summary>How a line stands between two vehicles.</summary>
public enum LineState
{
    Coupled,

    /// <summary>Both ends have it and it is said not to be coupled.</summary>
    NotCoupled,

    /// <summary>One of the two vehicles does not have it at all.</summary>
    Lacking,

    /// <summary>One of the two has it at its other end alone: turned, it could be coupled.</summary>
    WrongEnd,

    /// <summary>What the two ends have for it does not go together.</summary>
    Unlike,
}
