using System.Runtime.CompilerServices;
using Sightglass.Basics.Numbers;
using Sightglass.Network.Laws;
using Sightglass.Network.Laws.Common;

namespace Sightglass.Reference.Tests.Laws;

/// <summary>
/// <c>orif</c> of kind 2 whose target follows a node: q = C·S(sign·gain·(L(c0 + c1·p_c) − c2·p_d))·F(pa, pb).
/// Potentials: a, b, d, c. Parameters: C, sign, c2, c1, lo, hi, δ, 1/(2δ). Inputs: c0, gain.
/// </summary>
public readonly struct TrackingOrificeLaw : ILaw
{
    public static int Potentials => 4;

    public static int Flows => 1;

    public static int Parameters => 8;

    public static int Inputs => 2;

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static void Evaluate<T>(ref T p, ref T k, ref T u, ref T q, ref T dq)
        where T : struct, IReal<T>
    {
        T c2 = Unsafe.Add(ref k, 2);
        T c1 = Unsafe.Add(ref k, 3);
        T gain = Unsafe.Add(ref k, 1) * Unsafe.Add(ref u, 1);
        T target = SoftClamp.Of(
            u + (c1 * Unsafe.Add(ref p, 3)), Unsafe.Add(ref k, 4), Unsafe.Add(ref k, 5), Unsafe.Add(ref k, 6), Unsafe.Add(ref k, 7), out T follows);
        T opening = Smooth.Step(gain * (target - (c2 * Unsafe.Add(ref p, 2))), out T step);
        T flow = GasFlow.Of(p, Unsafe.Add(ref p, 1), out T da, out T db);
        T opens = k * step * gain * flow;
        q = k * opening * flow;
        dq = k * opening * da;
        Unsafe.Add(ref dq, 1) = k * opening * db;
        Unsafe.Add(ref dq, 2) = -(opens * c2);
        Unsafe.Add(ref dq, 3) = opens * follows * c1;
    }
}
