namespace Sightglass.Web.Live;

/// <summary>Beats of one phase: ten a second by the clock on the wall. Those of different phases come one after the other, so that not all want the processor at once.</summary>
internal sealed class Metre
{
    /// <summary>Phases between two beats of one.</summary>
    public const int Phases = 10;

    private readonly long _origin;
    private readonly long _step;
    private readonly int _phase;

    /// <param name="clock">The clock on the wall.</param>
    /// <param name="origin">Its reading at the first beat of phase 0.</param>
    /// <param name="phase">From 0 to <see cref="Phases"/> − 1.</param>
    public Metre(TimeProvider clock, long origin, int phase)
    {
        ArgumentNullException.ThrowIfNull(clock);
        ArgumentOutOfRangeException.ThrowIfNegative(phase);
        ArgumentOutOfRangeException.ThrowIfGreaterThanOrEqual(phase, Phases);
        (_origin, _phase, _step) = (origin, phase, (long)(Step.TotalSeconds * clock.TimestampFrequency));
    }

    /// <summary>Between two beats of one phase.</summary>
    public static TimeSpan Beat { get; } = TimeSpan.FromMilliseconds(100);

    /// <summary>Between the beats of one phase and those of the next.</summary>
    public static TimeSpan Step { get; } = Beat / Phases;

    /// <summary>The reading of the clock at the earliest beat that does not come before another reading.</summary>
    public long Next(long wall)
    {
        long first = _origin + (_phase * _step);
        long beat = Phases * _step;
        return first + (Math.Max(0, (wall - first + beat - 1) / beat) * beat);
    }

    /// <summary>The reading of the clock at the latest beat that does not come after another reading; the first beat where there was none.</summary>
    public long Last(long wall)
    {
        long next = Next(wall);
        return next == wall || next - (Phases * _step) < _origin ? next : next - (Phases * _step);
    }
}
