using Sightglass.Network.Laws.Common;

namespace Sightglass.Network.Stores;

/// <summary>
/// A kinetic accumulator of charge: what is at hand and what is bound, two stores joined by a slow path, so that a great current empties the first while the second still has much, and rest brings some back.
/// Source: Manwell and McGowan 1993, Lead acid battery storage model (from memory).
/// </summary>
/// <param name="Available">Sheet of the <see cref="LinearStore"/> at hand; amounts in C, potential its level: the C that a full one of that level has in all.</param>
/// <param name="Bound">Sheet of the bound one.</param>
/// <param name="Path">Sheet of the <see cref="LinearPath"/> between them.</param>
/// <param name="Start">Charge in each at the start, C.</param>
public sealed record TwoWells(double[] Available, double[] Bound, double[] Path, (double Available, double Bound) Start)
{
    /// <summary>The sheets of an accumulator at rest.</summary>
    /// <param name="charge">C in it.</param>
    /// <param name="share">c: share of the capacity that is at hand, between 0 and 1.</param>
    /// <param name="rate">k′: by which the levels come together, 1/s, above 0.</param>
    public static TwoWells Of(double charge, double share, double rate)
    {
        ArgumentOutOfRangeException.ThrowIfNegative(charge);
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(share);
        ArgumentOutOfRangeException.ThrowIfGreaterThanOrEqual(share, 1);
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(rate);
        return new(
            LinearStore.ParametersOf(0, 0, share), LinearStore.ParametersOf(0, 0, 1 - share), LinearPath.ParametersOf(rate * share * (1 - share)), (charge * share, charge * (1 - share)));
    }
}
