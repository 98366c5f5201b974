using System.Globalization;
using Sightglass.Basics.Time;

namespace Sightglass.Cli.Output;

/// <summary>Times of a run as people read them.</summary>
internal static class Clock
{
    /// <summary><c>1:02:03</c>, whole seconds.</summary>
    public static string Text(SimTime time)
    {
        TimeSpan span = TimeSpan.FromSeconds(Math.Floor(time.Seconds));
        return string.Create(CultureInfo.InvariantCulture, $"{(int)span.TotalHours}:{span.Minutes:00}:{span.Seconds:00}");
    }
}
