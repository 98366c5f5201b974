using Sightglass.Plant.Signals;

namespace Sightglass.World;

/// <summary>A margin that somebody waits for: a condition of a card, a must-never, a hazard. It only tells. Used again and again.</summary>
internal sealed class Sentinel
{
    /// <summary>The card's result, to stay so.</summary>
    public const int Stay = 1;

    /// <summary>The waits of a card's people are numbered from here on.</summary>
    public const int Wait = 10;

    /// <summary>Must-nevers are numbered from here on.</summary>
    public const int MustNever = 100;

    /// <summary>Hazards are numbered from here on.</summary>
    public const int Hazard = 1000;

    /// <summary>Hazards watched for one person at most.</summary>
    public const int HazardsAPerson = 1000;

    /// <summary>What an overseer watches is numbered below zero.</summary>
    public static int OfOverseer(int watch) => -1 - watch;

    /// <summary>Who is told.</summary>
    public int Owner { get; private set; }

    /// <summary>Negative until it comes true.</summary>
    public Signal Margin { get; private set; } = null!;

    /// <summary>Value when last looked at, at or after the moment it was set.</summary>
    public double Last { get; set; }

    /// <summary>Value at the nearest end of the pending steps; not a number where that has not been looked at.</summary>
    public double AtEnd { get; set; }

    public void Set(int owner, Signal margin, double last) => (Owner, Margin, Last, AtEnd) = (owner, margin, last, double.NaN);
}
