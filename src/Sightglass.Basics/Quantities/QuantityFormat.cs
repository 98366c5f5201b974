using System.Globalization;
using System.Text;

namespace Sightglass.Basics.Quantities;

/// <summary>
/// Shows SI values in a unit: narrow no-break spaces (U+202F) in thousands and before the unit, a true minus sign (U+2212),
/// as many digits as the instrument shows.
/// </summary>
public static class QuantityFormat
{
    private const char Narrow = '\u202F';
    private const int MostDecimals = 9;
    private const int FreeDigits = 4;

    /// <summary>Number and unit, such as <c>1 250 L</c>.</summary>
    /// <param name="si">The value in SI.</param>
    /// <param name="unit">The unit to show it in.</param>
    /// <param name="resolution">The least step shown, in SI (a difference: 1 degF is 5/9 K); null for four significant digits.</param>
    public static string Text(double si, Unit unit, double? resolution = null)
    {
        ArgumentNullException.ThrowIfNull(unit);
        string symbol = Symbol(unit);
        string number = Number(si, unit, resolution);
        return symbol.Length == 0 ? number : unit.Symbol == "deg" ? number + symbol : $"{number}{Narrow}{symbol}";
    }

    /// <summary>The number alone; an en dash for what is not a number.</summary>
    public static string Number(double si, Unit unit, double? resolution = null)
    {
        ArgumentNullException.ThrowIfNull(unit);
        double value = unit.FromSi(si);
        if (!double.IsFinite(value))
        {
            return double.IsNaN(value) ? "–" : value > 0 ? "∞" : "−∞";
        }

        double step = resolution is { } r && r > 0 ? r / unit.Factor : FreeStep(value);
        return Grouped(RoundTo(value, step), Decimals(step, resolution is null));
    }

    /// <summary>The value in its unit, rounded to whole steps; halves away from zero.</summary>
    /// <param name="si">The value in SI.</param>
    /// <param name="unit">The unit whose scale the steps stand on.</param>
    /// <param name="resolution">The least step, in SI (a difference).</param>
    /// <returns>In the unit.</returns>
    public static double Rounded(double si, Unit unit, double resolution)
    {
        ArgumentNullException.ThrowIfNull(unit);
        return RoundTo(unit.FromSi(si), resolution / unit.Factor);
    }

    /// <summary>The symbol as printed: <c>m²</c>, <c>°C</c>, nothing for plain numbers.</summary>
    public static string Symbol(Unit unit)
    {
        ArgumentNullException.ThrowIfNull(unit);
        return unit.Symbol switch
        {
            "1" => "",
            "degC" => "°C",
            "degF" => "°F",
            "deg" => "°",
            "Ohm" => "Ω",
            _ => UnitTable.Raised(unit.Symbol).Replace(' ', '\u00A0'),
        };
    }

    private static double RoundTo(double value, double step) => Math.Round(value / step, MidpointRounding.AwayFromZero) * step;

    /// <summary>A power of ten that leaves four significant digits.</summary>
    private static double FreeStep(double value)
    {
        double size = Math.Abs(value);
        int power = size > 0 ? (int)Math.Floor(Math.Log10(size)) : 0;
        return Math.Pow(10, Math.Clamp(power - FreeDigits + 1, -MostDecimals, 0));
    }

    private static int Decimals(double step, bool free)
    {
        for (int d = 0; d < MostDecimals; d++)
        {
            double scaled = step * Math.Pow(10, d);
            if (Math.Abs(scaled - Math.Round(scaled)) <= 1e-6 * scaled)
            {
                return free ? -d : d;
            }
        }

        return free ? -MostDecimals : MostDecimals;
    }

    /// <param name="decimals">How many; negative: at most so many, trailing zeros left out.</param>
    private static string Grouped(double value, int decimals)
    {
        string format = decimals < 0 ? $"0.{new string('#', -decimals)}" : $"F{decimals}";
        string plain = Math.Abs(value).ToString(format, CultureInfo.InvariantCulture);
        int whole = plain.IndexOf('.', StringComparison.Ordinal);
        whole = whole < 0 ? plain.Length : whole;
        bool zero = !plain.AsSpan().ContainsAnyInRange('1', '9');
        StringBuilder text = new(value < 0 && !zero ? "−" : "");
        for (int i = 0; i < plain.Length; i++)
        {
            if (i > 0 && i < whole && (whole - i) % 3 == 0)
            {
                text.Append(Narrow);
            }

            text.Append(plain[i]);
        }

        return text.ToString();
    }
}
