using System.Runtime.CompilerServices;
using Sightglass.Basics.Numbers;
using Sightglass.Network.Laws;
using Sightglass.Network.Laws.Common;

namespace Sightglass.Reference.Tests.Laws;

/// <summary><c>head</c>: q = K·open·x/√(|x|+ε), x = pa − pb + off. Parameters: K, ε, off. Input: open.</summary>
public readonly struct HeadLaw : ILaw
{
    public static int Potentials => 2;

    public static int Flows => 1;

    public static int Parameters => 3;

    public static int Inputs => 1;

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static void Evaluate<T>(ref T p, ref T k, ref T u, ref T q, ref T dq)
        where T : struct, IReal<T>
    {
        T x = p - Unsafe.Add(ref p, 1) + Unsafe.Add(ref k, 2);
        T conductance = k * u;
        q = conductance * Smooth.SignedRoot(x, Unsafe.Add(ref k, 1), out T slope);
        T d = conductance * slope;
        dq = d;
        Unsafe.Add(ref dq, 1) = -d;
    }
}
