using System.Collections.Immutable;
using Sightglass.Basics.Quantities;
using Sightglass.Book.Model;
using Sightglass.Plant.Calculators.Fuel;

namespace Sightglass.Plant.Calculators.Sheets;

/// <summary>What is in a tank, from the glasses at both its ends, wherever the machine stands.</summary>
internal static class TankSheets
{
    /// <summary>Difference of the two glasses, m, that the grade does not explain and that is more than a careful reading is off.</summary>
    private const double Doubtful = 0.02;

    private const string Caution = "Read each glass at eye level, with its cocks open, when nothing sloshes. The lowest part of a tank is never drawn by the pump. Fuel on the ground burns and is slippery.";

    // Places among the results.
    private const int Dry = 2, Apart = 3;

    private static readonly CalculatorValue s_length = new("length", Dimension.Metre, "of the tank, from the glass at its first end to the one at its second", "2.4 m") { Least = "1 mm" };
    private static readonly CalculatorValue s_width = new("width", Dimension.Metre, "of the tank, across the machine", "1 m") { Least = "1 mm" };
    private static readonly CalculatorValue s_depth = new("depth", Dimension.Metre, "from its floor to its roof", "0.9 m") { Least = "1 mm" };
    private static readonly CalculatorValue s_diameter = new("diameter", Dimension.Metre, "of the cylinder", "1.2 m") { Least = "1 mm" };
    private static readonly CalculatorValue s_upright = s_diameter with { Text = "of the cylinder, from glass to glass", Example = "1.5 m" };

    private static readonly ImmutableArray<CalculatorValue> s_readings =
    [
        new("first", Dimension.Metre, "level in the glass at the first end, 0 where it shows nothing", "563 mm") { Least = "0 mm" },
        new("second", Dimension.Metre, "level in the glass at the second end, 0 where it shows nothing", "437 mm") { Least = "0 mm" },
        new("grade", Dimension.One, "rise over run of the track from the first end towards the second, downhill below 0", "5.24 %") { Usual = "0 %", Least = "-10 %", Most = "10 %" },
        new("cant", Dimension.One, "rise over run across, from the left to the right", "0 %") { Usual = "0 %", Least = "-15 %", Most = "15 %" },
        new("aside", Dimension.Metre, "how far right of the tank's middle the glasses stand, left below 0", "0 m") { Usual = "0 m", Least = "-3 m", Most = "3 m" },
        new("zero", Dimension.Metre, "how high the zero of the glasses stands over the floor of the tank", "0 mm") { Usual = "0 mm", Least = "0 mm" },
    ];

    private static readonly ImmutableArray<CalculatorValue> s_results =
    [
        new("volume", Dimension.Volume, "what is in the tank", "L"),
        new("by the mean", Dimension.Volume, "what the mean of the glasses alone would say", "L"),
        new("dry", Dimension.One, "share of the floor that is dry", "%"),
        new("apart", Dimension.Metre, "by how much the first glass should show more than the second on this grade", "mm"),
    ];

    private static readonly ImmutableArray<CalculatorRemark> s_remarks =
    [
        new("A part of the floor is dry: the mean of the glasses is no longer exact; the volume above is that of the wedge.", (_, r) => r[Dry] > 0),
        new("The two glasses do not differ as this grade makes them: one of them misleads, or the grade is another.", Misleads),
    ];

    public static ImmutableArray<CalculatorSheet> All { get; } =
    [
        Sheet(
            "glasses of a box tank",
            "What is in a tank with a flat floor and upright walls, from the glasses at both ends.",
            [s_length, s_width, s_depth],
            "level = (first + second) / 2 + zero + cant * aside; volume = length * width * level while the floor is wet all over and depth is not reached; apart = grade * length",
            "geometry: what lies under a plane over a rectangle, exact also where a part of the floor is dry",
            v => (v[0], new BoxTank(v[0], v[1], v[2]).Under, v[2])),
        Sheet(
            "glasses of a lying tank",
            "What is in a lying cylinder, from the glasses at both ends.",
            [s_length, s_diameter],
            "level = (first + second) / 2 + zero + cant * aside; volume = length * (R^2 * acos((R - level) / R) - (R - level) * sqrt(2 * R * level - level^2)) on the level, with R = diameter / 2; apart = grade * length",
            "area of a segment of a circle (Marks' handbook, from memory), summed along the tank",
            v => (v[0], new LyingTank(v[1] / 2, v[0]).Under, v[1])),
        Sheet(
            "glasses of an upright tank",
            "What is in an upright cylinder, from the glasses at both ends.",
            [s_upright, s_depth],
            "level = (first + second) / 2 + zero + cant * aside; volume = pi / 4 * diameter^2 * level while the floor is wet all over and depth is not reached; apart = grade * diameter",
            "geometry: the wedge of a cylinder, exact also where a part of the floor is dry",
            v => (v[0], new UprightTank(v[0] / 2, v[1]).Under, v[1])),
    ];

    /// <param name="tank">From the values: m from glass to glass, what is under a plane, and the height of the tank.</param>
    private static CalculatorSheet Sheet(
        string name, string purpose, ImmutableArray<CalculatorValue> shape, string formula, string source, Func<ImmutableArray<double>, (double Apart, Func<GlassPlane, TankContents> Under, double Height)> tank) => new()
        {
            Name = name,
            Purpose = purpose,
            Inputs = [.. shape, .. s_readings],
            Results = s_results,
            Formula = formula,
            Source = source,
            Caution = Caution,
            Signal = SignalWord.Caution,
            Plot = new("first", "20 mm", "900 mm", "volume"),
            Remarks = s_remarks,
            NoAnswer = "both glasses show nothing, or one shows more than the tank is high",
            Work = v =>
            {
                (double apart, Func<GlassPlane, TankContents> under, double height) = tank(v);
                (double first, double second) = (OverFloor(v[^6], v[^1]), OverFloor(v[^5], v[^1]));
                if (Math.Max(first, second) > height || GlassPlane.Of(first, second, apart, v[^4], v[^3], v[^2]) is not { } plane)
                {
                    return [double.NaN, double.NaN, double.NaN, double.NaN];
                }

                TankContents contents = under(plane), level = under(new((first + second) / 2, 0, 0));
                return [contents.Volume, level.Volume, Math.Max(0, contents.Dry), v[^4] * apart];
            },
        };

    private static double OverFloor(double glass, double floor) => glass > 0 ? glass + floor : 0;

    private static bool Misleads(ImmutableArray<double> v, ImmutableArray<double> results)
    {
        (double first, double second) = (v[^6], v[^5]);
        return first > 0 && second > 0 && Math.Abs(first - second - results[Apart]) > Doubtful;
    }
}
