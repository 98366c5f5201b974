using System.Collections.Immutable;

namespace Sightglass.Drawing.Charts;

/// <summary>Round numbers along a scale.</summary>
public static class ChartTicks
{
    private static readonly double[] _clockSteps = [1, 2, 5, 10, 15, 30, 60, 120, 300, 600, 900, 1800, 3600, 7200, 10800, 21600, 43200, 86400];

    /// <summary>Multiples of 1, 2, 2.5 or 5 times a power of ten within a range, at most about as many as asked.</summary>
    public static ImmutableArray<double> Round(double from, double to, int most) => Multiples(from, to, RoundStep(to - from, most));

    /// <summary>The step of <see cref="Round"/>.</summary>
    public static double RoundStep(double span, int most)
    {
        double rough = Math.Max(span, 1e-300) / Math.Max(most, 1);
        double power = Math.Pow(10, Math.Floor(Math.Log10(rough)));
        double part = rough / power;
        return power * (part <= 1.0000001 ? 1 : part <= 2 ? 2 : part <= 2.5 ? 2.5 : part <= 5 ? 5 : 10);
    }

    /// <summary>Whole seconds, minutes or hours within a range of seconds.</summary>
    public static ImmutableArray<double> Clock(double from, double to, int most)
    {
        double step = _clockSteps.FirstOrDefault(s => (to - from) / s <= most);
        return Multiples(from, to, step > 0 ? step : Math.Ceiling((to - from) / most / 86400) * 86400);
    }

    /// <summary>Multiples of a step within a range.</summary>
    public static ImmutableArray<double> Multiples(double from, double to, double step)
    {
        ImmutableArray<double>.Builder ticks = ImmutableArray.CreateBuilder<double>();
        for (double k = Math.Ceiling((from / step) - 1e-9); k * step <= to + (step * 1e-9) && ticks.Count < 1000; k++)
        {
            ticks.Add(k * step);
        }

        return ticks.ToImmutable();
    }
}
