using System.Runtime.CompilerServices;
using Sightglass.Basics.Numbers;
using Sightglass.Network.Laws;

namespace Sightglass.Network.Tests.Groups;

/// <summary>A test's own law: what runs out is in proportion to what is there, q = g·pa. Parameter: g.</summary>
internal readonly struct DrainLaw : ILaw
{
    public static int Potentials => 2;

    public static int Flows => 1;

    public static int Parameters => 1;

    public static int Inputs => 0;

    public static void Evaluate<T>(ref T p, ref T k, ref T u, ref T q, ref T dq)
        where T : struct, IReal<T>
    {
        q = k * p;
        dq = k;
        Unsafe.Add(ref dq, 1) = T.Of(0);
    }
}
