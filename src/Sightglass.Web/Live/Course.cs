using Sightglass.Basics.Time;

namespace Sightglass.Web.Live;

/// <summary>Where a live world is to be by the clock on the wall: a straight line from where it was set going, so that nothing adds up, however often it is asked.</summary>
/// <param name="clock">The clock on the wall.</param>
internal sealed class Course(TimeProvider clock)
{
    /// <summary>Seconds of the wall's clock that may be made up for at once: after a pause of the computer the world does not race.</summary>
    private const double MostCatchUp = 1;

    private long _since;
    private long _seen;
    private double _from;
    private double _rate;

    /// <summary>Goes on from a moment of the world.</summary>
    /// <param name="now">That moment.</param>
    /// <param name="rate">Simulated seconds a second.</param>
    /// <param name="metre">Where it is looked at by beats: it starts a little later, by less than two beats, so that every beat comes on a whole part of a simulated second. Null: at once.</param>
    public void Set(SimTime now, double rate, Metre? metre)
    {
        long wall = clock.GetTimestamp();
        (_rate, _seen) = (rate, wall);
        if (metre is null || rate == 0)
        {
            (_since, _from) = (wall, now.Seconds);
            return;
        }

        // The next whole part is reached at a beat.
        double part = rate * Metre.Beat.TotalSeconds;
        _from = Math.Ceiling((now.Seconds / part) - 1e-6) * part;
        _since = metre.Next(wall + (long)Math.Ceiling((_from - now.Seconds) / rate * clock.TimestampFrequency));
    }

    /// <summary>Where the world is to be at a reading of the clock on the wall; earlier than where it was set going until then.</summary>
    public SimTime At(long wall)
    {
        double late = Seconds(wall - _seen) - MostCatchUp;
        if (late > 0)
        {
            // By whole beats, so that they still come on whole parts.
            _since += (long)Math.Ceiling(late / Metre.Beat.TotalSeconds) * Stamps(Metre.Beat);
        }

        _seen = Math.Max(_seen, wall);
        return SimTime.FromSeconds(_from + (Seconds(wall - _since) * _rate));
    }

    private double Seconds(long stamps) => (double)stamps / clock.TimestampFrequency;

    private long Stamps(TimeSpan time) => (long)(time.TotalSeconds * clock.TimestampFrequency);
}
