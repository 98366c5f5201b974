namespace Sightglass.Drawing.Labels;

/// <summary>Which way a flag flies from its pole, as seen on the sheet.</summary>
public enum FlagDirection
{
    Right,
    Left,

    /// <summary>The pole ends in the middle of the flag.</summary>
    Centre,
}
