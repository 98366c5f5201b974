namespace Sightglass.Network.Springs;

/// <summary>How bodies on springs came to stand.</summary>
public enum StandOutcome
{
    Stands,

    /// <summary>Some body is free to move in a way that no spring resists: it falls over or down. Forces are those of what still carries.</summary>
    Falls,

    /// <summary>Which springs carry could not be told within the bound.</summary>
    NotSettled,
}
