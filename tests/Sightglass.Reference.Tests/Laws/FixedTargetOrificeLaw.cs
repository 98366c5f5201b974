using System.Runtime.CompilerServices;
using Sightglass.Basics.Numbers;
using Sightglass.Network.Laws;
using Sightglass.Network.Laws.Common;

namespace Sightglass.Reference.Tests.Laws;

/// <summary>
/// <c>orif</c> of kind 2 whose control row has a fixed target: q = C·S(sign·gain·(T − c2·p_d))·F(pa, pb).
/// Potentials: a, b, d. Parameters: C, sign, c2. Inputs: T, gain.
/// </summary>
public readonly struct FixedTargetOrificeLaw : ILaw
{
    public static int Potentials => 3;

    public static int Flows => 1;

    public static int Parameters => 3;

    public static int Inputs => 2;

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static void Evaluate<T>(ref T p, ref T k, ref T u, ref T q, ref T dq)
        where T : struct, IReal<T>
    {
        T sign = Unsafe.Add(ref k, 1);
        T c2 = Unsafe.Add(ref k, 2);
        T gain = sign * Unsafe.Add(ref u, 1);
        T opening = Smooth.Step(gain * (u - (c2 * Unsafe.Add(ref p, 2))), out T step);
        T flow = GasFlow.Of(p, Unsafe.Add(ref p, 1), out T da, out T db);
        q = k * opening * flow;
        dq = k * opening * da;
        Unsafe.Add(ref dq, 1) = k * opening * db;
        Unsafe.Add(ref dq, 2) = -(k * step * gain * c2 * flow);
    }
}
