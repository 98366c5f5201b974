using System.Runtime.CompilerServices;
using Sightglass.Basics.Numbers;

namespace Sightglass.Reference.Tests.Laws;

/// <summary>The flow function of the reference problems' orifices.</summary>
internal static class GasFlow
{
    private const double CriticalRatio = 0.5;

    private const double Epsilon = 1e-3;

    /// <summary>
    /// F = p_up·w/√(w+1e-3), w = s(2−s), s = min(1, (1−p_lo/p_up)/(1−0.5)), with the sign of pa−pb; and its derivatives.
    /// The upstream pressure is kept above 1e-9 bar, so that the function is finite where both are zero.
    /// </summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static T Of<T>(T pa, T pb, out T da, out T db)
        where T : struct, IReal<T>
    {
        T one = T.Of(1);
        T forward = T.Less(pb, pa);
        T up = T.Max(T.Max(pa, pb), T.Of(1e-9));
        T ratio = T.Min(pa, pb) / up;
        T s = T.Min((one - ratio) / T.Of(1 - CriticalRatio), one);
        T w = s * (T.Of(2) - s);
        T r = one / T.Sqrt(w + T.Of(Epsilon));
        T phi = w * r;
        T dPhi = r * (one - (T.Of(0.5) * w * r * r));
        T g = dPhi * T.Of(2) * (one - s) / T.Of(1 - CriticalRatio);
        T byUp = phi + (g * ratio);
        da = T.Select(forward, byUp, g);
        db = -T.Select(forward, g, byUp);
        T size = up * phi;
        return T.Select(forward, size, -size);
    }
}
