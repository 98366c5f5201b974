using System.Runtime.CompilerServices;
using Sightglass.Basics.Numbers;

namespace Sightglass.Network.Laws.Common;

/// <summary>
/// A flow that is told from outside together with how it changes with the potential of the store that it leaves: q = q₀ + s·(p − p₀). The current of an accumulator between two solutions of its circuit: an operating
/// point and its slope (Thévenin), so that charging comes to rest by itself.
/// </summary>
/// <remarks>No parameters. Inputs: q₀ [amount/s], s [amount/s per unit of potential, 0 or more], p₀ [potential].</remarks>
public readonly struct SlopedFlow : ILaw
{
    public static int Potentials => 2;

    public static int Flows => 1;

    public static int Parameters => 0;

    public static int Inputs => 3;

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static void Evaluate<T>(ref T p, ref T k, ref T u, ref T q, ref T dq)
        where T : struct, IReal<T>
    {
        T slope = Unsafe.Add(ref u, 1);
        q = u + (slope * (p - Unsafe.Add(ref u, 2)));
        dq = slope;
        Unsafe.Add(ref dq, 1) = T.Of(0);
    }
}
