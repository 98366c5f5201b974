using System.Runtime.CompilerServices;
using Sightglass.Basics.Numbers;

namespace Sightglass.Network.Laws.Common;

/// <summary>A number that follows an aim with a lag, or counts at a steady rate: ż = (aim − z·held)/τ. Source: first-order lag (any text of control, from memory).</summary>
/// <remarks>
/// Sees z twice. Parameters: 1/τ [1/s], held: 1 for a follower, 0 for a counter. Input: the aim. Its flow goes into z and comes from nowhere.
/// </remarks>
public readonly struct Lag : ILaw
{
    public static int Potentials => 2;

    public static int Flows => 1;

    public static int Parameters => 2;

    public static int Inputs => 1;

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static void Evaluate<T>(ref T p, ref T k, ref T u, ref T q, ref T dq)
        where T : struct, IReal<T>
    {
        T held = Unsafe.Add(ref k, 1);
        q = k * (u - (held * Unsafe.Add(ref p, 1)));
        dq = T.Of(0);
        Unsafe.Add(ref dq, 1) = -(k * held);
    }

    /// <summary>The sheet of a follower: what is left of a difference falls to 1/e in τ.</summary>
    /// <param name="time">τ, s, above 0.</param>
    public static double[] Follower(double time)
    {
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(time);
        return [1 / time, 1];
    }

    /// <summary>The sheet of a counter: an aim of 1 counts to 1 in τ, an aim of −1 back.</summary>
    /// <param name="time">τ, s, above 0.</param>
    public static double[] Counter(double time)
    {
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(time);
        return [1 / time, 0];
    }
}
