using System.Runtime.CompilerServices;
using Sightglass.Basics.Numbers;
using Sightglass.Network.Laws;
using Sightglass.Network.Laws.Common;

namespace Sightglass.Reference.Tests.Laws;

/// <summary><c>orif</c> of kind 1: q = C·S((pa−pb−crack)/width)·F(pa, pb). Parameters: C, crack, 1/width.</summary>
public readonly struct CheckOrificeLaw : ILaw
{
    public static int Potentials => 2;

    public static int Flows => 1;

    public static int Parameters => 3;

    public static int Inputs => 0;

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static void Evaluate<T>(ref T p, ref T k, ref T u, ref T q, ref T dq)
        where T : struct, IReal<T>
    {
        T b = Unsafe.Add(ref p, 1);
        T perWidth = Unsafe.Add(ref k, 2);
        T opening = Smooth.Step((p - b - Unsafe.Add(ref k, 1)) * perWidth, out T step);
        T flow = GasFlow.Of(p, b, out T da, out T db);
        T opens = step * perWidth * flow;
        q = k * opening * flow;
        dq = k * ((opening * da) + opens);
        Unsafe.Add(ref dq, 1) = k * ((opening * db) - opens);
    }
}
