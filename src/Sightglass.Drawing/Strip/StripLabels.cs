namespace Sightglass.Drawing.Strip;

/// <summary>Which items of a strip have a flag.</summary>
public enum StripLabels
{
    /// <summary>All items on the outside, and those inside at the current place.</summary>
    All,

    /// <summary>Only the items of the current place and the selected one.</summary>
    Current,

    /// <summary>None, marks neither.</summary>
    None,
}
