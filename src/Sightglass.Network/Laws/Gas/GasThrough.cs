using System.Runtime.CompilerServices;
using Sightglass.Basics.Numbers;
using Sightglass.Network.Laws.Common;

namespace Sightglass.Network.Laws.Gas;

/// <summary>
/// Flow of a gas between two pressures, for a passage that passes 1 at an upstream pressure of 1 when choked: p_up·√W(s), s = (p_up − p_down)/((1 − b)·p_up), at most 1,
/// with the sign of pa − pb. The root is a <see cref="Smooth.RoundedRoot"/>, so that the slope at equal pressures is finite.
/// </summary>
internal static class GasThrough
{
    /// <summary>Added to the upstream pressure where something is divided by it, Pa: a share of 1e-8 at 1 bar.</summary>
    private const double Vacuum = 1e-3;

    /// <summary>The flow, and its slopes by the two pressures.</summary>
    /// <param name="perRange">1/(1 − b).</param>
    /// <param name="root">√W below which the root is rounded.</param>
    /// <param name="curve">Parameters of the curve W.</param>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static T Flow<T, TCurve>(T pa, T pb, T perRange, T root, ref T curve, out T slopeA, out T slopeB)
        where T : struct, IReal<T>
        where TCurve : IGasCurve
    {
        T forward = T.LessOrEqual(pb, pa);
        T up = T.Max(T.Max(pa, pb), T.Of(0));
        T down = T.Max(T.Min(pa, pb), T.Of(0));
        T inverse = T.Of(1) / (up + T.Of(Vacuum));
        T perUp = perRange * inverse;
        T s = T.Min((up - down) * perUp, T.Of(1));
        T share = Smooth.RoundedRoot(TCurve.Square(s, ref curve, out T squareSlope), root, out T shareSlope);
        T rise = up * shareSlope * squareSlope * perUp;
        T byUp = share + (rise * (down + T.Of(Vacuum)) * inverse);
        slopeA = T.Select(forward, byUp, rise);
        slopeB = -T.Select(forward, rise, byUp);
        T flow = up * share;
        return T.Select(forward, flow, -flow);
    }
}
