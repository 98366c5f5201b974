using System.Runtime.CompilerServices;
using Sightglass.Basics.Numbers;
using Sightglass.Network.Laws;

namespace Sightglass.Reference.Tests.Laws;

/// <summary>
/// <c>relay</c>: what the follower z is after, L(en·(p_e−p_b)/w) between −1 and 1. Potentials: e, b.
/// Parameters: w, en.
/// </summary>
public readonly struct RelayLaw : ILaw
{
    public static int Potentials => 2;

    public static int Flows => 1;

    public static int Parameters => 2;

    public static int Inputs => 0;

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static void Evaluate<T>(ref T p, ref T k, ref T u, ref T q, ref T dq)
        where T : struct, IReal<T>
    {
        T slope = Unsafe.Add(ref k, 1) / k;
        q = SoftClamp.Of(slope * (p - Unsafe.Add(ref p, 1)), T.Of(-1), T.Of(1), T.Of(0.1), out T follows);
        dq = slope * follows;
        Unsafe.Add(ref dq, 1) = -dq;
    }
}
