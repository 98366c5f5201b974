using System.Runtime.CompilerServices;
using Sightglass.Basics.Numbers;
using Sightglass.Network.Laws.Common;

namespace Sightglass.Network.Laws.Gas;

/// <summary>
/// A valve that pressures steer: a <see cref="GasIso6358"/> component whose opening rises by a smooth step as a balance x rises from 0 to 1,
/// x = g·(target − sensed) − c, target = set + a·first + b·second held between a least and a greatest pressure. A relay valve fills a pipe while its pressure is below the pilot's (g above 0) and
/// empties it by a second such path while it is above (g below 0); a control valve's target falls with the brake pipe's pressure. Common practice, no source.
/// </summary>
/// <remarks>
/// Potentials: both ends, the sensed pressure, the first and the second pilot; any may be the same as another. Parameters: C·ρ₀·√(T₀/T) [kg/s/Pa], 1/(1 − critical
/// ratio), rounding, g [1/Pa], c, a, b, least [Pa], greatest [Pa], δ [Pa] over ± which the target is rounded where it is held, 1/(2δ). Inputs: set [Pa], share of the opening
/// that works, 0…1, share that stays open whatever the pressures, 0…1.
/// </remarks>
public readonly struct GasServo : ILaw
{
    /// <summary>Where the set pressure is in the inputs.</summary>
    public const int SetInput = 0;

    /// <summary>Where the greatest target is in the parameters.</summary>
    public const int GreatestParameter = Sheet + 5;

    private const int Sheet = 3;

    public static int Potentials => 5;

    public static int Flows => 1;

    public static int Parameters => Sheet + 8;

    public static int Inputs => 3;

    [MethodImpl(MethodImplOptions.NoInlining)]
    public static void Evaluate<T>(ref T p, ref T k, ref T u, ref T q, ref T dq)
        where T : struct, IReal<T>
    {
        T second = Unsafe.Add(ref p, 1);
        ref T own = ref Unsafe.Add(ref k, Sheet);
        T gain = own;
        T first = Unsafe.Add(ref own, 2);
        T other = Unsafe.Add(ref own, 3);
        T delta = Unsafe.Add(ref own, 6);
        T perTwo = Unsafe.Add(ref own, 7);
        T wanted = u + (first * Unsafe.Add(ref p, 3)) + (other * Unsafe.Add(ref p, 4));
        T low = Smooth.Positive(wanted - Unsafe.Add(ref own, 4), delta, perTwo, out T lowSlope);
        T high = Smooth.Positive(wanted - Unsafe.Add(ref own, 5), delta, perTwo, out T highSlope);
        T target = Unsafe.Add(ref own, 4) + (low - high);
        T held = lowSlope - highSlope;
        T step = Smooth.Step((gain * (target - Unsafe.Add(ref p, 2))) - Unsafe.Add(ref own, 1), out T stepSlope);
        T works = Unsafe.Add(ref u, 1);
        T passes = Unsafe.Add(ref u, 2);
        T lift = works * (T.Of(1) - passes);
        T opening = passes + (lift * step);
        T flow = k * GasThrough.Flow<T, EllipseCurve>(p, second, Unsafe.Add(ref k, 1), Unsafe.Add(ref k, 2), ref k, out T slopeA, out T slopeB);
        q = opening * flow;
        dq = k * opening * slopeA;
        Unsafe.Add(ref dq, 1) = k * opening * slopeB;
        T byBalance = flow * lift * stepSlope * gain;
        Unsafe.Add(ref dq, 2) = -byBalance;
        Unsafe.Add(ref dq, 3) = byBalance * held * first;
        Unsafe.Add(ref dq, 4) = byBalance * held * other;
    }

    /// <summary>The sheet of a valve.</summary>
    /// <param name="component">The sheet of the <see cref="GasIso6358"/> component it is when open.</param>
    /// <param name="width">Pressure difference from beginning to open to fully open, Pa: above 0 where it opens below the target, below 0 where it opens above it.</param>
    /// <param name="begins">Pressure difference at which it begins to open, Pa; below 0 where it is open at the target already.</param>
    /// <param name="first">Target by the first pilot.</param>
    /// <param name="second">Target by the second pilot.</param>
    /// <param name="least">Least target, Pa absolute.</param>
    /// <param name="greatest">Greatest target, Pa absolute, not below the least.</param>
    public static double[] ParametersOf(double[] component, double width, double begins, double first, double second, double least, double greatest)
    {
        ArgumentOutOfRangeException.ThrowIfZero(width);
        ArgumentOutOfRangeException.ThrowIfLessThan(greatest, least);
        double size = Math.Abs(width);
        return [.. component, 1 / width, begins / size, first, second, least, greatest, size / 4, 2 / size];
    }
}
