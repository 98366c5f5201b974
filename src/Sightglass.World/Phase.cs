namespace Sightglass.World;

/// <summary>What a world waits for between two calls of <see cref="World.Advance"/>.</summary>
internal enum Phase
{
    /// <summary>The start is committed and in view: what one network tells another is told for the first time.</summary>
    FirstLook,

    /// <summary>Networks without a pending step need one.</summary>
    Propose,

    /// <summary>Proposals are made; the state at the nearest end is to be looked at.</summary>
    LookAhead,

    /// <summary>The state at the nearest end is in view: is a sentinel crossed on the way?</summary>
    Judge,

    /// <summary>A crossing is being closed in on.</summary>
    Locate,

    /// <summary>The next event is known.</summary>
    Ready,

    /// <summary>The state at the moment of an event is in view.</summary>
    Event,

    /// <summary>What an event has moved is in view, of what stands aside as well.</summary>
    Settle,

    /// <summary>The state at the moment of an event is committed: inputs may change.</summary>
    Change,
}
