using System.Runtime.CompilerServices;
using Sightglass.Basics.Numbers;

namespace Sightglass.Reference.Tests.Laws;

/// <summary>The flow function of the reference problems' orifices.</summary>
internal static class GasFlow
{
    private const double CriticalRatio = 0.5;

    private const double PerRise = 1 / ((1 - CriticalRatio) * (1 - CriticalRatio));

    private const double Epsilon = 1e-3;

    /// <summary>
    /// F = p_up·w/√(w+1e-3), w = s(2−s), s = min(1, (1−p_lo/p_up)/(1−0.5)), with the sign of pa−pb; and its derivatives.
    /// The upstream pressure is kept above 1e-9 bar, so that the function is finite where both are zero.
    /// </summary>
    /// <remarks>
    /// With p_lo kept above 0.5·p_up and X = w·p_up² = (p_up − p_lo)·p_lo/(1−0.5)², F = X/√(X + 1e-3·p_up²): one root and one division. (The factor that multiplies p_lo is
    /// (1−2·0.5)·p_up + p_lo, which is p_lo for this critical ratio alone.)
    /// </remarks>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static T Of<T>(T pa, T pb, out T da, out T db)
        where T : struct, IReal<T>
    {
        T forward = T.Less(pb, pa);
        T up = T.Max(T.Max(pa, pb), T.Of(1e-9));
        T low = T.Max(T.Min(pa, pb), up * T.Of(CriticalRatio));
        T rise = low * T.Of(PerRise);
        T x = (up - low) * rise;
        T small = up * T.Of(Epsilon);
        T r = T.Of(1) / T.Sqrt(T.Fma(small, up, x));
        T flow = x * r;
        T half = T.Of(0.5) * flow * r;
        T slope = T.Fma(-r, half, r);
        T byUp = T.Fma(slope, rise, -(flow * r * r * small));
        T byLow = slope * T.Fma(T.Of(-PerRise), up, rise + rise);
        da = T.Select(forward, byUp, byLow);
        db = -T.Select(forward, byLow, byUp);
        return T.Select(forward, flow, -flow);
    }
}
