using System.Globalization;

namespace Sightglass.Basics.Time;

/// <summary>A moment as a clock shows it, hours only where there are any: <c>2:05</c>, <c>1:02:05</c>.</summary>
/// <param name="Time">Since the start.</param>
public readonly record struct ClockWords(SimTime Time)
{
    public override string ToString()
    {
        long seconds = (long)Math.Round(Time.Seconds, MidpointRounding.AwayFromZero);
        (long hours, long minutes) = (seconds / 3600, seconds / 60 % 60);
        return hours > 0
            ? string.Create(CultureInfo.InvariantCulture, $"{hours}:{minutes:00}:{seconds % 60:00}")
            : string.Create(CultureInfo.InvariantCulture, $"{minutes}:{seconds % 60:00}");
    }
}
