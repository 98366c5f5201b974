namespace Sightglass.Drawing.Diagram;

/// <summary>How a chain is drawn.</summary>
internal enum DiagramRoute
{
    /// <summary>Along a lane below, from left to right.</summary>
    Run,

    /// <summary>Straight down from a tank to the supply side.</summary>
    Supply,

    /// <summary>Straight down from the return side into a tank.</summary>
    Return,

    /// <summary>Up on the right to the return side.</summary>
    Riser,

    /// <summary>Along a lane above, from right to left.</summary>
    ReturnRun,

    /// <summary>From a tank to the outside.</summary>
    Drain,

    /// <summary>From the outside into a tank.</summary>
    Fill,

    /// <summary>Between the outside and a line or machine.</summary>
    Stub,

    /// <summary>None of these: a lane of its own below everything.</summary>
    Loop,
}
