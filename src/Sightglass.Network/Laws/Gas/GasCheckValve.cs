using System.Runtime.CompilerServices;
using Sightglass.Basics.Numbers;
using Sightglass.Network.Laws.Common;

namespace Sightglass.Network.Laws.Gas;

/// <summary>
/// A valve that opens by itself in one direction: a <see cref="GasIso6358"/> component whose opening rises by a smooth step from nothing at the crack pressure to all at
/// crack + width. As a relief valve the crack pressure is the set pressure over the outside. Common practice, no source.
/// </summary>
/// <remarks>
/// Parameters: C·ρ₀·√(T₀/T) [kg/s/Pa], 1/(1 − b), rounding, crack [Pa], 1/width [1/Pa]. Inputs: opening 0…1 (0 = stuck shut), share of it that stays open
/// whatever the pressures (0 = tight, 1 = stuck open).
/// </remarks>
public readonly struct GasCheckValve : ILaw
{
    public static int Potentials => 2;

    public static int Flows => 1;

    public static int Parameters => 5;

    public static int Inputs => 2;

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static void Evaluate<T>(ref T p, ref T k, ref T u, ref T q, ref T dq)
        where T : struct, IReal<T>
    {
        T second = Unsafe.Add(ref p, 1);
        T perWidth = Unsafe.Add(ref k, 4);
        T passing = Unsafe.Add(ref u, 1);
        T step = Smooth.Step((p - second - Unsafe.Add(ref k, 3)) * perWidth, out T stepSlope);
        T flow = GasThrough.Flow<T, EllipseCurve>(p, second, Unsafe.Add(ref k, 1), Unsafe.Add(ref k, 2), ref k, out T slopeA, out T slopeB);
        T conductance = k * u;
        T lift = T.Of(1) - passing;
        T opening = passing + (lift * step);
        T opens = lift * stepSlope * perWidth * flow;
        q = conductance * opening * flow;
        dq = conductance * ((opening * slopeA) + opens);
        Unsafe.Add(ref dq, 1) = conductance * ((opening * slopeB) - opens);
    }

    /// <summary>The sheet of a valve.</summary>
    /// <param name="component">The sheet of the <see cref="GasIso6358"/> component it is when open.</param>
    /// <param name="crack">Pressure difference at which it begins to open, Pa, not below 0.</param>
    /// <param name="width">From there to fully open, Pa, above 0: of a relief valve its accumulation.</param>
    public static double[] ParametersOf(double[] component, double crack, double width)
    {
        ArgumentOutOfRangeException.ThrowIfNegative(crack);
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(width);
        return [.. component, crack, 1 / width];
    }
}
