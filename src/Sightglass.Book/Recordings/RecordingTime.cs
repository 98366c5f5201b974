using System.Globalization;
using System.Text.RegularExpressions;

namespace Sightglass.Book.Recordings;

/// <summary>Clock times as recorders write them: <c>14:02:30</c>, <c>2:02:30.5 PM</c>, <c>2031-02-11T14:02:30Z</c>. The date is not read: a clock that falls by more than half a day has passed midnight.</summary>
internal static partial class RecordingTime
{
    public const double Day = 86_400;

    private const int Longest = 64;

    /// <summary>Seconds since midnight, or null.</summary>
    public static double? Clock(string text)
    {
        if (text.Length > Longest || !text.Contains(':', StringComparison.Ordinal) || Form().Match(text) is not { Success: true } match)
        {
            return null;
        }

        int hours = int.Parse(match.Groups["h"].Value, CultureInfo.InvariantCulture);
        int minutes = int.Parse(match.Groups["m"].Value, CultureInfo.InvariantCulture);
        double seconds = match.Groups["s"].Success ? double.Parse(match.Groups["s"].Value.Replace(',', '.'), CultureInfo.InvariantCulture) : 0;
        if (match.Groups["half"].Success)
        {
            if (hours is 0 or > 12)
            {
                return null;
            }

            hours = (hours % 12) + (match.Groups["half"].Value[0] is 'p' or 'P' ? 12 : 0);
        }

        return hours < 24 && minutes < 60 && seconds < 60 ? (hours * 3600) + (minutes * 60) + seconds : null;
    }

    /// <summary>How many characters of a clock time are a date and what parts it from the clock; 0 where there is none.</summary>
    public static int DateLength(string text)
    {
        int end = text.AsSpan().IndexOfAny(' ', 'T');
        return end > 0 && !text.AsSpan(0, end).Contains(':') ? end + 1 : 0;
    }

    [GeneratedRegex(@"^(?:[0-9]{1,4}[-/.][0-9]{1,2}[-/.][0-9]{1,4}[ T])?(?<h>[0-9]{1,2}):(?<m>[0-9]{2})(?::(?<s>[0-9]{2}(?:[.,][0-9]{1,9})?))?(?: ?(?<half>[AaPp][Mm]))?(?:Z|[+-][0-9]{2}:?[0-9]{2})?$", RegexOptions.ExplicitCapture | RegexOptions.CultureInvariant)]
    private static partial Regex Form();
}
