using System.Runtime.CompilerServices;
using Sightglass.Basics.Numbers;

namespace Sightglass.Network.Laws.Common;

/// <summary>
/// A flow in proportion to a difference of potentials: q = g·x·(p_a − p_b). Heat by convection or conduction (Newton's law of cooling, g in W/K), charge between the two wells of an accumulator,
/// leakage in a narrow gap. Source: any text.
/// </summary>
/// <remarks>Parameter: g, amount per second and unit of potential. Input: opening x, 0 or more.</remarks>
public readonly struct LinearPath : ILaw
{
    public static int Potentials => 2;

    public static int Flows => 1;

    public static int Parameters => 1;

    public static int Inputs => 1;

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static void Evaluate<T>(ref T p, ref T k, ref T u, ref T q, ref T dq)
        where T : struct, IReal<T>
    {
        T slope = k * u;
        q = slope * (p - Unsafe.Add(ref p, 1));
        dq = slope;
        Unsafe.Add(ref dq, 1) = -slope;
    }

    /// <summary>The sheet of a path.</summary>
    /// <param name="conductance">g, above 0.</param>
    public static double[] ParametersOf(double conductance)
    {
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(conductance);
        return [conductance];
    }
}
