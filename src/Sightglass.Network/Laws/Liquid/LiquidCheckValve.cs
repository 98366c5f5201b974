using System.Runtime.CompilerServices;
using Sightglass.Basics.Numbers;
using Sightglass.Network.Laws.Common;

namespace Sightglass.Network.Laws.Liquid;

/// <summary>
/// A valve that opens by itself in one direction: a <see cref="LiquidOrifice"/> whose opening rises by a smooth step from nothing at the crack pressure to all at
/// crack + width. Also a relief valve. Exact orifice outside that band; shut is shut.
/// </summary>
/// <remarks>
/// Parameters: K [kg/s/√Pa], ε [Pa] as in the orifice, crack [Pa], 1/width [1/Pa], offset [Pa]. Inputs: opening 0…1 (0 = stuck shut), share of it that stays open
/// whatever the pressures (0 = tight, 1 = stuck open). Common practice, no source.
/// </remarks>
public readonly struct LiquidCheckValve : ILaw
{
    /// <summary>Where the static head at the first end stands in the sheet: what a change of tilt changes.</summary>
    public const int OffsetParameter = 4;

    public static int Potentials => 2;

    public static int Flows => 1;

    public static int Parameters => 5;

    public static int Inputs => 2;

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static void Evaluate<T>(ref T p, ref T k, ref T u, ref T q, ref T dq)
        where T : struct, IReal<T>
    {
        T x = p + Unsafe.Add(ref k, 4) - Unsafe.Add(ref p, 1);
        T perWidth = Unsafe.Add(ref k, 3);
        T passing = Unsafe.Add(ref u, 1);
        T step = Smooth.Step((x - Unsafe.Add(ref k, 2)) * perWidth, out T stepSlope);
        T root = Smooth.SignedRoot(x, Unsafe.Add(ref k, 1), out T rootSlope);
        T conductance = k * u;
        T lift = T.Of(1) - passing;
        T opening = passing + (lift * step);
        q = conductance * opening * root;
        T d = conductance * ((opening * rootSlope) + (lift * stepSlope * perWidth * root));
        dq = d;
        Unsafe.Add(ref dq, 1) = -d;
    }

    /// <summary>The sheet of a valve.</summary>
    /// <param name="orifice">The sheet of the <see cref="LiquidOrifice"/> it is when open.</param>
    /// <param name="crack">Pressure difference at which it begins to open, Pa, not below 0.</param>
    /// <param name="width">From there to fully open, Pa, above 0.</param>
    public static double[] ParametersOf(double[] orifice, double crack, double width)
    {
        ArgumentOutOfRangeException.ThrowIfNegative(crack);
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(width);
        return [orifice[0], orifice[1], crack, 1 / width, orifice[2]];
    }
}
