using System.Runtime.CompilerServices;
using Sightglass.Basics.Numbers;
using Sightglass.Network.Laws;

namespace Sightglass.Reference.Tests.Laws;

/// <summary>
/// <c>relay</c>: what leaves the follower z, z − L(en·(p_e−p_b)/w) with L between −1 and 1; the follower's capacity is its lag τ.
/// Potentials: z, e, b. Parameter: en/w.
/// </summary>
public readonly struct RelayLaw : ILaw
{
    public static int Potentials => 3;

    public static int Flows => 1;

    public static int Parameters => 1;

    public static int Inputs => 0;

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static void Evaluate<T>(ref T p, ref T k, ref T u, ref T q, ref T dq)
        where T : struct, IReal<T>
    {
        T difference = Unsafe.Add(ref p, 1) - Unsafe.Add(ref p, 2);
        q = p - SoftClamp.Of(k * difference, T.Of(-1), T.Of(1), T.Of(0.1), T.Of(1 / 0.2), out T follows);
        T slope = k * follows;
        dq = T.Of(1);
        Unsafe.Add(ref dq, 1) = -slope;
        Unsafe.Add(ref dq, 2) = slope;
    }
}
