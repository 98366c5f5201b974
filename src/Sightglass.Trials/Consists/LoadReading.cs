using Sightglass.Book.Model;

namespace Sightglass.Trials.Consists;

/// <summary>What a load of three phases has and takes. V, W.</summary>
/// <param name="Load">The item.</param>
/// <param name="Volts">Between its phases, mean of the three.</param>
/// <param name="Rated">V that it is made for.</param>
/// <param name="Watts">That it takes.</param>
/// <param name="Works">Whether it has the voltage that it needs.</param>
public sealed record LoadReading(Item Load, double Volts, double Rated, double Watts, bool Works)
{
    /// <summary>Share over its rated voltage above which it is no longer the voltage it is made for (common practice, no source).</summary>
    private const double Over = 1.1;

    public bool IsTooHigh => Volts > Over * Rated;
}
