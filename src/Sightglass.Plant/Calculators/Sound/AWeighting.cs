namespace Sightglass.Plant.Calculators.Sound;

/// <summary>The A weighting of sound level meters. Source: IEC 61672-1 (from memory).</summary>
public static class AWeighting
{
    /// <summary>The weights of octaves from 63 Hz to 8 kHz as meters and handbooks print them, dB.</summary>
    public static ReadOnlySpan<double> Octaves => [-26.2, -16.1, -8.6, -3.2, 0, 1.2, 1.0, -1.1];

    /// <summary>dB added to a tone's level, 0 at 1 kHz.</summary>
    /// <param name="hertz">Above 0.</param>
    public static double Decibels(double hertz) => 20 * Real.Log10(Response(hertz) / Response(1000));

    /// <summary>dB(A) of levels in octaves from 63 Hz on.</summary>
    public static double OfOctaves(ReadOnlySpan<double> levels)
    {
        Span<double> weighted = stackalloc double[Octaves.Length];
        for (int i = 0; i < levels.Length; i++)
        {
            weighted[i] = levels[i] + Octaves[i];
        }

        return SoundLevel.Sum(weighted[..levels.Length]);
    }

    private static double Response(double hertz)
    {
        double f = hertz * hertz;
        const double Low = 20.6 * 20.6, High = 12_194.0 * 12_194, One = 107.7 * 107.7, Two = 737.9 * 737.9;
        return High * f * f / ((f + Low) * Math.Sqrt((f + One) * (f + Two)) * (f + High));
    }
}
