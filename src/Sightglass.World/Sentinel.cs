using Sightglass.Plant.Signals;

namespace Sightglass.World;

/// <summary>A margin that somebody waits for: a condition of a card, a must-never, a hazard. It only tells.</summary>
/// <param name="owner">Who is told.</param>
/// <param name="margin">Negative until it comes true.</param>
internal sealed class Sentinel(int owner, Signal margin)
{
    /// <summary>The card's wait.</summary>
    public const int Wait = 0;

    /// <summary>The card's result, to stay so.</summary>
    public const int Stay = 1;

    /// <summary>Must-nevers are numbered from here on.</summary>
    public const int MustNever = 100;

    /// <summary>Hazards are numbered from here on.</summary>
    public const int Hazard = 1000;

    public int Owner { get; } = owner;

    public Signal Margin { get; } = margin;

    /// <summary>Value when last looked at, at or after the moment it was set.</summary>
    public double Last { get; set; }
}
