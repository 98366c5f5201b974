using System.Runtime.CompilerServices;
using Sightglass.Basics.Numbers;
using Sightglass.Network.Laws.Common;

namespace Sightglass.Network.Laws.Liquid;

/// <summary>
/// A consumer that takes what it is told, as long as there is pressure: the demand times a smooth step from nothing at the least pressure to all at that plus the
/// width. It does not feel the second end. Behind a line with air (in a <see cref="MixedPath{TFrom, TLaw, TTo}"/>) it takes that volume of mixture, so less liquid.
/// </summary>
/// <remarks>Parameters: least pressure [Pa], 1/width [1/Pa]. Input: demand [kg/s], not below 0. Common practice, no source.</remarks>
public readonly struct LiquidDemand : ILaw
{
    public static int Potentials => 2;

    public static int Flows => 1;

    public static int Parameters => 2;

    public static int Inputs => 1;

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static void Evaluate<T>(ref T p, ref T k, ref T u, ref T q, ref T dq)
        where T : struct, IReal<T>
    {
        T perWidth = Unsafe.Add(ref k, 1);
        q = u * Smooth.Step((p - k) * perWidth, out T slope);
        dq = u * slope * perWidth;
        Unsafe.Add(ref dq, 1) = T.Of(0);
    }

    /// <summary>The sheet of a consumer.</summary>
    /// <param name="leastPressure">Pa absolute at which it gets nothing.</param>
    /// <param name="width">From there to all it asks for, Pa, above 0.</param>
    public static double[] ParametersOf(double leastPressure, double width)
    {
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(width);
        return [leastPressure, 1 / width];
    }
}
