namespace Sightglass.Trials.Causes;

/// <summary>What somebody looks at.</summary>
public enum LookKind
{
    /// <summary>An instrument.</summary>
    Reading,

    /// <summary>A lamp.</summary>
    Lamp,

    /// <summary>Where a control stands.</summary>
    Position,

    /// <summary>What is seen, heard or smelled.</summary>
    Sign,
}
