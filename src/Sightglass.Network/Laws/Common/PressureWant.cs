using System.Runtime.CompilerServices;
using Sightglass.Basics.Numbers;

namespace Sightglass.Network.Laws.Common;

/// <summary>
/// A follower of 'this pressure is too low': ż = (S((limit − p)/width + ½) − z)/τ, S the smooth step. z goes to 1 while the pressure lies below the limit and
/// back to 0 while above. Sees the pressure, then z. Common practice, no source.
/// </summary>
/// <remarks>Parameters: limit [Pa], 1/width [1/Pa], 1/τ [1/s]. Its flow goes into z and comes from nowhere.</remarks>
public readonly struct PressureWant : ILaw
{
    public static int Potentials => 2;

    public static int Flows => 1;

    public static int Parameters => 3;

    public static int Inputs => 0;

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static void Evaluate<T>(ref T p, ref T k, ref T u, ref T q, ref T dq)
        where T : struct, IReal<T>
    {
        T perWidth = Unsafe.Add(ref k, 1);
        T rate = Unsafe.Add(ref k, 2);
        T low = Smooth.Step(((k - p) * perWidth) + T.Of(0.5), out T slope);
        q = (low - Unsafe.Add(ref p, 1)) * rate;
        dq = -(slope * perWidth * rate);
        Unsafe.Add(ref dq, 1) = -rate;
    }

    /// <summary>The sheet of a follower.</summary>
    /// <param name="limit">Pa absolute.</param>
    /// <param name="width">Pa over which it changes its mind, above 0.</param>
    /// <param name="time">τ, s, above 0.</param>
    public static double[] ParametersOf(double limit, double width, double time)
    {
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(width);
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(time);
        return [limit, 1 / width, 1 / time];
    }
}
