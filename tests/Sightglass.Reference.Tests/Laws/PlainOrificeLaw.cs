using System.Runtime.CompilerServices;
using Sightglass.Basics.Numbers;
using Sightglass.Network.Laws;

namespace Sightglass.Reference.Tests.Laws;

/// <summary><c>orif</c> of kind 0: q = C·u·F(pa, pb). Parameter: C. Input: u.</summary>
public readonly struct PlainOrificeLaw : ILaw
{
    public static int Potentials => 2;

    public static int Flows => 1;

    public static int Parameters => 1;

    public static int Inputs => 1;

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static void Evaluate<T>(ref T p, ref T k, ref T u, ref T q, ref T dq)
        where T : struct, IReal<T>
    {
        T conductance = k * u;
        q = conductance * GasFlow.Of(p, Unsafe.Add(ref p, 1), out T da, out T db);
        dq = conductance * da;
        Unsafe.Add(ref dq, 1) = conductance * db;
    }
}
