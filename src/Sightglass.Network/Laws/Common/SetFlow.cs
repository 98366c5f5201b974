using System.Runtime.CompilerServices;
using Sightglass.Basics.Numbers;

namespace Sightglass.Network.Laws.Common;

/// <summary>
/// A flow that is told from outside, whatever the potentials: an electric current out of an accumulator, heat into a winding. Who tells it sees to it that a store is not drawn below nothing.
/// </summary>
/// <remarks>No parameters. Input: the flow, amount per second, of either sign.</remarks>
public readonly struct SetFlow : ILaw
{
    public static int Potentials => 2;

    public static int Flows => 1;

    public static int Parameters => 0;

    public static int Inputs => 1;

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static void Evaluate<T>(ref T p, ref T k, ref T u, ref T q, ref T dq)
        where T : struct, IReal<T>
    {
        q = u;
        dq = T.Of(0);
        Unsafe.Add(ref dq, 1) = T.Of(0);
    }
}
