namespace Sightglass.Drawing.Ladder;

/// <summary>A wire as drawn: a level line. The rails come once in each row.</summary>
public sealed record LadderBar(LadderWire Wire, double Left, double Right, double Y)
{
    /// <summary>Whether it is one of the two rails between which a row hangs.</summary>
    public bool IsRail { get; init; }

    /// <summary>Counted over the whole drawing, for ids.</summary>
    public int Number { get; init; }
}
