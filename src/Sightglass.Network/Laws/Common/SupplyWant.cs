using System.Runtime.CompilerServices;
using Sightglass.Basics.Numbers;

namespace Sightglass.Network.Laws.Common;

/// <summary>
/// A follower of 'what comes here cannot be used': ż = (f − z)/τ, f near 1 while the pressure lies below a limit or air fills more than a share of the line, near
/// 0 while neither. f = 1 − (1 − S_p)(1 − S_a) with smooth steps S. Sees the pressure, the air share, then z. Common practice, no source.
/// </summary>
/// <remarks>
/// Parameters: limit [Pa], 1/width [1/Pa], share of air 0…1, 1/width of that, 1/τ [1/s]. Its flow goes into z and comes from nowhere.
/// </remarks>
public readonly struct SupplyWant : ILaw
{
    public static int Potentials => 3;

    public static int Flows => 1;

    public static int Parameters => 5;

    public static int Inputs => 0;

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static void Evaluate<T>(ref T p, ref T k, ref T u, ref T q, ref T dq)
        where T : struct, IReal<T>
    {
        T perPressure = Unsafe.Add(ref k, 1);
        T perAir = Unsafe.Add(ref k, 3);
        T rate = Unsafe.Add(ref k, 4);
        T low = Smooth.Step(((k - p) * perPressure) + T.Of(0.5), out T lowSlope);
        T airy = Smooth.Step(((Unsafe.Add(ref p, 1) - Unsafe.Add(ref k, 2)) * perAir) + T.Of(0.5), out T airySlope);
        T notLow = T.Of(1) - low;
        T notAiry = T.Of(1) - airy;
        q = (T.Of(1) - (notLow * notAiry) - Unsafe.Add(ref p, 2)) * rate;
        dq = -(lowSlope * perPressure * notAiry * rate);
        Unsafe.Add(ref dq, 1) = airySlope * perAir * notLow * rate;
        Unsafe.Add(ref dq, 2) = -rate;
    }

    /// <summary>The sheet of a follower.</summary>
    /// <param name="limit">Pa absolute.</param>
    /// <param name="width">Pa over which it changes its mind, above 0.</param>
    /// <param name="air">Share of air at which half of it counts as want, 0…1.</param>
    /// <param name="time">τ, s, above 0.</param>
    public static double[] ParametersOf(double limit, double width, double air, double time)
    {
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(width);
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(air);
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(time);
        return [limit, 1 / width, air, 1 / air, 1 / time];
    }
}
