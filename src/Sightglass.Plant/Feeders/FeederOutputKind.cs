namespace Sightglass.Plant.Feeders;

/// <summary>What a feeder tells.</summary>
internal enum FeederOutputKind
{
    /// <summary>V: mean of the three voltages between phases of a busbar.</summary>
    LineVoltage,

    /// <summary>V: the greatest between any two phases of a busbar, or one and the frame.</summary>
    GreatestVoltage,

    /// <summary>V of the frame over the neutral of the sources: 0 while no phase touches it.</summary>
    FrameVoltage,

    /// <summary>A: the greatest of the wires of a line.</summary>
    Current,

    /// <summary>W that go into a line at its first end.</summary>
    Power,

    /// <summary>W that loads draw.</summary>
    Drawn,

    /// <summary>What an input was.</summary>
    Given,

    /// <summary>1 where a source gives no more current and has lowered its voltage, else 0.</summary>
    Limited,
}
