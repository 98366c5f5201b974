using System.Globalization;
using Sightglass.Basics.Time;

namespace Sightglass.Web.Debrief;

/// <summary>A moment since the start as people write it: <c>12:07</c>, <c>1:02:30</c>, with decimals of a second where they want them.</summary>
internal static class MomentText
{
    private const double LongestDrill = 7 * 24 * 3600;

    /// <returns>Null for what is no moment.</returns>
    public static SimTime? TryRead(string? text)
    {
        string[] parts = (text ?? "").Trim().Split(':');
        double seconds = 0;
        if (parts.Length is < 2 or > 3)
        {
            return null;
        }

        for (int i = 0; i < parts.Length; i++)
        {
            NumberStyles style = i == parts.Length - 1 ? NumberStyles.AllowDecimalPoint : NumberStyles.None;
            if (!double.TryParse(parts[i], style, CultureInfo.InvariantCulture, out double part) || (i > 0 && part >= 60))
            {
                return null;
            }

            seconds = (seconds * 60) + part;
        }

        return seconds <= LongestDrill ? SimTime.FromSeconds(seconds) : null;
    }
}
