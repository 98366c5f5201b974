using System.Globalization;

namespace Sightglass.Drawing.Charts;

/// <summary>Numbers as a reader of charts wants them: fixed decimals, narrow space in thousands, a real minus.</summary>
public static class ChartNumber
{
    private static readonly NumberFormatInfo _format = new() { NumberGroupSeparator = "\u202F", NegativeSign = "−", NumberDecimalSeparator = "." };

    /// <summary>A number with a fixed count of decimals.</summary>
    public static string Text(double value, int decimals)
    {
        double rounded = Math.Round(value, decimals, MidpointRounding.AwayFromZero);
        bool thousands = Math.Abs(rounded) >= 10000;
        return (rounded == 0 ? 0 : rounded).ToString((thousands ? "N" : "F") + decimals.ToString(CultureInfo.InvariantCulture), _format);
    }

    /// <summary>The decimals that tell steps of a size apart.</summary>
    public static int DecimalsFor(double step)
    {
        int decimals = 0;
        while (decimals < 6 && Math.Abs((step * Math.Pow(10, decimals)) - Math.Round(step * Math.Pow(10, decimals))) > 1e-6)
        {
            decimals++;
        }

        return decimals;
    }

    /// <summary>Seconds as a clock: <c>0:05</c>, <c>1:02:40</c>; without seconds where a scale is in whole minutes of hours.</summary>
    public static string Clock(double seconds)
    {
        long whole = (long)Math.Round(Math.Abs(seconds));
        string sign = seconds < 0 && whole > 0 ? "−" : "";
        return whole >= 3600
            ? string.Create(CultureInfo.InvariantCulture, $"{sign}{whole / 3600}:{whole / 60 % 60:00}:{whole % 60:00}")
            : string.Create(CultureInfo.InvariantCulture, $"{sign}{whole / 60}:{whole % 60:00}");
    }
}
