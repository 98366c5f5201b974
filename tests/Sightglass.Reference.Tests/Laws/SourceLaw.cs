using System.Runtime.CompilerServices;
using Sightglass.Basics.Numbers;
using Sightglass.Network.Laws;

namespace Sightglass.Reference.Tests.Laws;

/// <summary><c>src</c>: a flow that is an input, into the node from the outside: first end outside, second the node.</summary>
public readonly struct SourceLaw : ILaw
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
