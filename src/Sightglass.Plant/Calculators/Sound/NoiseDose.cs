namespace Sightglass.Plant.Calculators.Sound;

/// <summary>
/// Dose of noise over a working day in per cent, 100 for eight hours at the criterion: 100·ΣC/T, T = 8 h/2^((L − criterion)/exchange). Source: 29 CFR 1910.95 appendix A (read); NIOSH criteria from memory.
/// </summary>
/// <param name="Criterion">dB(A) that may be heard for eight hours.</param>
/// <param name="Exchange">dB(A) that halve the time.</param>
/// <param name="PerDecade">dB(A) for ten times the dose, as it is printed: exchange/log₁₀2 rounded.</param>
public sealed record NoiseDose(double Criterion, double Exchange, double PerDecade)
{
    private const double Day = 8 * 3600;

    /// <summary>US workplace rule: 90 dB(A), 5 dB. Half of the dose, 85 dB(A) over the day, is where a hearing programme begins (49 CFR 227.5, read).</summary>
    public static NoiseDose Osha => new(90, 5, 16.61);

    /// <summary>The stricter recommendation: 85 dB(A), 3 dB.</summary>
    public static NoiseDose Niosh => new(85, 3, 10);

    /// <summary>s that a level may last in a day.</summary>
    public double AllowedSeconds(double level) => Day / Real.Pow(2, (level - Criterion) / Exchange);

    /// <summary>Per cent of all exposures.</summary>
    public double Percent(params ReadOnlySpan<(double Level, double Seconds)> exposures)
    {
        double sum = 0;
        foreach ((double level, double seconds) in exposures)
        {
            sum += seconds / AllowedSeconds(level);
        }

        return 100 * sum;
    }

    /// <summary>dB(A) that would give the dose over eight hours.</summary>
    public double DayLevel(double percent) => (PerDecade * Real.Log10(percent / 100)) + Criterion;
}
