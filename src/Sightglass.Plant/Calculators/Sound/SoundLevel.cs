namespace Sightglass.Plant.Calculators.Sound;

/// <summary>Levels in dB. Source: any text of acoustics. Ground, wind and walls are left out: real sites differ by several dB.</summary>
public static class SoundLevel
{
    /// <summary>Level at a distance from a small source in the open: L₀ − 20·log₁₀(r/r₀), 6 dB for each doubling.</summary>
    /// <param name="level">L₀ at <paramref name="reference"/>.</param>
    /// <param name="reference">r₀, in the unit of <paramref name="distance"/>.</param>
    public static double AtDistance(double level, double reference, double distance) => level - (20 * Real.Log10(distance / reference));

    /// <summary>Distance at which a level is left, in the unit of the reference.</summary>
    public static double DistanceOf(double level, double reference, double left) => reference * Real.Pow(10, (level - left) / 20);

    /// <summary>Level of several sources that have nothing to do with each other: 10·log₁₀ Σ10^(L/10).</summary>
    public static double Sum(params ReadOnlySpan<double> levels)
    {
        double sum = 0;
        foreach (double level in levels)
        {
            sum += Real.Pow(10, level / 10);
        }

        return 10 * Real.Log10(sum);
    }
}
