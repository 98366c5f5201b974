namespace Sightglass.Basics.Time;

/// <summary>
/// A moment or a span of simulated time as a whole number of ticks of 2⁻²⁰ s (about 0.95 µs).
/// Every tick is exactly representable in a <see cref="double"/> of seconds up to 272 years, so that
/// cutting a step at a moment never rounds.
/// </summary>
public readonly record struct SimTime(long Ticks) : IComparable<SimTime>
{
    /// <summary>Ticks in one second.</summary>
    public const long TicksPerSecond = 1L << 20;

    /// <summary>The start of a run.</summary>
    public static readonly SimTime Zero;

    /// <summary>A moment that no run reaches.</summary>
    public static readonly SimTime Never = new(long.MaxValue);

    /// <summary>Seconds, exact for all runs shorter than 272 years.</summary>
    public double Seconds => Ticks * (1.0 / TicksPerSecond);

    /// <summary>The nearest tick to a number of seconds.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Not a number, or beyond 2⁶² ticks.</exception>
    public static SimTime FromSeconds(double seconds)
    {
        double ticks = seconds * TicksPerSecond;
        if (!(Math.Abs(ticks) < 4.6e18))
        {
            throw new ArgumentOutOfRangeException(nameof(seconds), seconds, "Seconds must be a number within 272 years.");
        }

        return new((long)Math.Round(ticks));
    }

    public int CompareTo(SimTime other) => Ticks.CompareTo(other.Ticks);

    public static SimTime operator +(SimTime a, SimTime b) => new(a.Ticks + b.Ticks);

    public static SimTime operator -(SimTime a, SimTime b) => new(a.Ticks - b.Ticks);

    public static bool operator <(SimTime a, SimTime b) => a.Ticks < b.Ticks;

    public static bool operator >(SimTime a, SimTime b) => a.Ticks > b.Ticks;

    public static bool operator <=(SimTime a, SimTime b) => a.Ticks <= b.Ticks;

    public static bool operator >=(SimTime a, SimTime b) => a.Ticks >= b.Ticks;

    public static SimTime Min(SimTime a, SimTime b) => a < b ? a : b;

    public override string ToString() => this == Never ? "never" : FormattableString.Invariant($"{Seconds:0.######} s");
}
