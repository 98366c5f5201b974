using System.Globalization;

namespace Sightglass.Drawing.Svg;

/// <summary>Numbers as they stand in a drawing: two decimals at most, never <c>-0</c>, the same on every machine.</summary>
public static class SvgNumber
{
    /// <summary>The text of a coordinate.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The number is not finite.</exception>
    public static string Format(double value)
    {
        if (!double.IsFinite(value))
        {
            throw new ArgumentOutOfRangeException(nameof(value), value, "A coordinate must be finite.");
        }

        double rounded = Math.Round(value, 2);
        return rounded == 0 ? "0" : rounded.ToString("0.##", CultureInfo.InvariantCulture);
    }
}
