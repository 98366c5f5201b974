namespace Sightglass.Trials.Consists;

/// <summary>How much weighs what a check of a train has found.</summary>
public enum FindingWeight
{
    /// <summary>To be known; nothing to mend.</summary>
    Mind,

    /// <summary>To be mended, or to be decided by those who may.</summary>
    Mend,

    /// <summary>It must not leave so.</summary>
    Stops,
}
