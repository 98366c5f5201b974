namespace Sightglass.World.Runs;

/// <summary>How far somebody has come with what they were asked to do.</summary>
public enum ErrandStage
{
    /// <summary>There is none.</summary>
    None,

    /// <summary>Asked, not attended to yet.</summary>
    Asked,

    /// <summary>Heard; their own step is finished first.</summary>
    Heard,

    /// <summary>Turning to it, or on the way.</summary>
    Begun,

    /// <summary>At the control.</summary>
    Operating,

    /// <summary>Saying how it went.</summary>
    Answering,
}
