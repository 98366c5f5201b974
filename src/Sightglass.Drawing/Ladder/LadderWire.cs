namespace Sightglass.Drawing.Ladder;

/// <summary>A wire of a circuit: a bar at which parts meet.</summary>
/// <param name="Id">Its name in the book, or <c>frame</c>.</param>
/// <param name="Label">Words for it.</param>
public sealed record LadderWire(string Id, string Label)
{
    /// <summary>Whether it is the metal of the machine.</summary>
    public bool IsFrame { get; init; }
}
