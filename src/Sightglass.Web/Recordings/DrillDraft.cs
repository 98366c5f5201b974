namespace Sightglass.Web.Recordings;

/// <summary>What somebody has typed of a drill that is to start from a recording, and what came of making it: so that a page which is loaded again finds it.</summary>
public sealed class DrillDraft
{
    /// <summary>As it is typed.</summary>
    public DrillAsk Ask { get; set; } = new("", "", "", "", "");

    /// <summary>What is being made, or was made last; null: nothing yet.</summary>
    public Task<MadeFiles>? Making { get; set; }
}
