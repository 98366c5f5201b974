using System.Runtime.CompilerServices;
using Sightglass.Basics.Numbers;
using Sightglass.Network.Laws;

namespace Sightglass.Reference.Tests.Laws;

/// <summary>
/// <c>relay</c>: what leaves the follower z, z − L(en·(p_e−p_b)/w) with L between −1 and 1; the follower's capacity is its lag τ.
/// Potentials: z, e, b. Parameters: w, en.
/// </summary>
public readonly struct RelayLaw : ILaw
{
    public static int Potentials => 3;

    public static int Flows => 1;

    public static int Parameters => 2;

    public static int Inputs => 0;

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static void Evaluate<T>(ref T p, ref T k, ref T u, ref T q, ref T dq)
        where T : struct, IReal<T>
    {
        T steepness = Unsafe.Add(ref k, 1) / k;
        T difference = Unsafe.Add(ref p, 1) - Unsafe.Add(ref p, 2);
        q = p - SoftClamp.Of(steepness * difference, T.Of(-1), T.Of(1), T.Of(0.1), out T follows);
        T slope = steepness * follows;
        dq = T.Of(1);
        Unsafe.Add(ref dq, 1) = -slope;
        Unsafe.Add(ref dq, 2) = slope;
    }
}
