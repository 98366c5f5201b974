using System.Runtime.CompilerServices;
using Sightglass.Basics.Numbers;
using Sightglass.Network.Laws;

namespace Sightglass.Reference.Tests.Laws;

/// <summary>
/// One term of a textbook system of equations: q = k·a·b·c, factors that are not wanted standing at 1. Not monotone, so no law of a plant: here the
/// integrator is tried alone. Potentials: a, b, c. Parameter: k.
/// </summary>
public readonly struct TermLaw : ILaw
{
    public static int Potentials => 3;

    public static int Flows => 1;

    public static int Parameters => 1;

    public static int Inputs => 0;

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static void Evaluate<T>(ref T p, ref T k, ref T u, ref T q, ref T dq)
        where T : struct, IReal<T>
    {
        T b = Unsafe.Add(ref p, 1);
        T c = Unsafe.Add(ref p, 2);
        T bc = b * c;
        q = k * p * bc;
        dq = k * bc;
        Unsafe.Add(ref dq, 1) = k * p * c;
        Unsafe.Add(ref dq, 2) = k * p * b;
    }
}
