namespace Sightglass.Network.Step;

/// <summary>
/// Closes in on the first tick at which a guard, negative at <see cref="Low"/>, is no longer negative.
/// Secant steps that aim half the tolerance past the root, with the Illinois change of weight (Dowell and Jarratt 1971, from memory)
/// and bisection where they do not shorten the interval enough.
/// </summary>
public struct Bracket
{
    /// <summary>How near the crossing is located: 2⁻¹⁶ s. Errors of a switch that fires again and again add up, so it is much finer than any event needs.</summary>
    public const long ToleranceTicks = 16;

    private double _atLow;
    private double _atHigh;
    private double _weightLow;
    private int _tries;
    private int _sameSide;

    public bool IsOpen { get; private set; }

    /// <summary>Ticks from the step's start; the guard is negative there.</summary>
    public long Low { get; private set; }

    /// <summary>Ticks from the step's start; the guard is not negative there.</summary>
    public long High { get; private set; }

    public static Bracket Open(long low, double atLow, long high, double atHigh) =>
        new() { IsOpen = true, Low = low, High = high, _atLow = atLow, _atHigh = atHigh, _weightLow = atLow };

    /// <summary>Whether <see cref="High"/> lies within the tolerance behind the crossing.</summary>
    public readonly bool IsClosed
    {
        get
        {
            long width = High - Low;
            return width <= ToleranceTicks || (double)width * _atHigh <= ToleranceTicks * (_atHigh - _atLow);
        }
    }

    /// <summary>The next tick to try, strictly between low and high.</summary>
    public readonly long Next()
    {
        double width = High - Low;
        double share = _weightLow / (_weightLow - _atHigh);
        double guess = (_tries & 3) == 3 ? 0.5 * width : (share * width) + (0.5 * ToleranceTicks);
        return Low + (long)Math.Clamp(Math.Ceiling(guess), 1, width - 1);
    }

    /// <summary>Takes in the value at a tick tried.</summary>
    public void Take(long tick, double value)
    {
        _tries++;
        if (value >= 0)
        {
            _weightLow = _sameSide > 0 ? 0.5 * _weightLow : _weightLow;
            (High, _atHigh, _sameSide) = (tick, value, 1);
        }
        else
        {
            (Low, _atLow, _weightLow, _sameSide) = (tick, value, value, -1);
        }
    }
}
