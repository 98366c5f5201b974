using System.Runtime.CompilerServices;
using Sightglass.Basics.Numbers;
using Sightglass.Network.Laws.Common;

namespace Sightglass.Network.Stores;

/// <summary>
/// A gas volume that warms and cools as it is filled and emptied: p = p₀·(m/m₀)ⁿ, n from 1 (wall temperature) to γ (no heat exchanged).
/// Temperature T = T₀·(p/p₀)^((n−1)/n). Source: polytropic change (any text of thermodynamics; from memory).
/// </summary>
/// <remarks>
/// Below a share <see cref="Least"/> of m₀ the curve is a parabola that joins it and ends at nothing, straight below. For n = 1 use <see cref="LinearStore"/>.
/// Parameters: p₀ [Pa], 1/m₀ [1/kg], n.
/// </remarks>
public readonly struct PolytropicGasStore : IStore
{
    /// <summary>Share of m₀ below which the curve is a parabola.</summary>
    public const double Least = 1e-3;

    public static int Amounts => 1;

    public static int Parameters => 3;

    [MethodImpl(MethodImplOptions.NoInlining)]
    public static void Evaluate<T>(ref T m, ref T k, ref T p, ref T c)
        where T : struct, IReal<T>
    {
        T perAmount = Unsafe.Add(ref k, 1);
        T exponent = Unsafe.Add(ref k, 2);
        T ratio = m * perAmount;
        T within = T.Max(ratio, T.Of(Least));
        T curve = k * Portable.Pow(within, exponent);
        T s = ratio * T.Of(1 / Least);
        T t = T.Max(s, T.Of(0));
        T straight = T.Of(2) - exponent;
        T bent = exponent - T.Of(1);
        T low = T.Less(s, T.Of(1));
        p = curve * T.Select(low, (straight * s) + (bent * t * t), T.Of(1));
        T slope = curve / within * T.Select(low, straight + (T.Of(2) * bent * t), exponent);
        c = T.Of(1) / (slope * perAmount);
    }

    /// <summary>The sheet of a volume.</summary>
    /// <param name="volume">m³.</param>
    /// <param name="pressure">p₀, Pa absolute.</param>
    /// <param name="temperature">T₀ at that pressure, K.</param>
    /// <param name="exponent">n, from 1 up to, not with, 2.</param>
    /// <param name="gasConstant">J/(kg·K).</param>
    public static double[] ParametersOf(
        double volume, double pressure, double temperature, double exponent, double gasConstant = Physical.AirGasConstant)
    {
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(volume);
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(pressure);
        ArgumentOutOfRangeException.ThrowIfLessThan(exponent, 1);
        ArgumentOutOfRangeException.ThrowIfGreaterThanOrEqual(exponent, 2);
        return [pressure, gasConstant * temperature / (pressure * volume), exponent];
    }
}
