namespace Sightglass.Drawing.Trains;

/// <summary>How a line is drawn between two vehicles.</summary>
public enum JointMark
{
    /// <summary>Neither has it: nothing is drawn.</summary>
    None,

    /// <summary>It goes through.</summary>
    Through,

    /// <summary>Both have it, and it is open between them.</summary>
    Open,

    /// <summary>One of the two does not have it: it ends.</summary>
    Ends,

    /// <summary>What is there does not go together.</summary>
    Wrong,
}
