namespace Sightglass.Network.Groups;

/// <summary>What a lane wants of the next iteration.</summary>
public enum LaneTask
{
    /// <summary>Nothing: its numbers stay as they are.</summary>
    None,

    /// <summary>A step from the committed state, as long as the error allows, shortened to land on a switch.</summary>
    Propose,

    /// <summary>The state at a moment within the pending step becomes the committed state.</summary>
    Cut,

    /// <summary>The state at a moment within the pending step, to look at until the next iteration.</summary>
    Peek,
}
