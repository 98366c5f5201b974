using System.Runtime.CompilerServices;
using Sightglass.Basics.Numbers;
using Sightglass.Network.Laws.Common;

namespace Sightglass.Network.Laws.Liquid;

/// <summary>
/// A valve that a float shuts: a <see cref="LiquidOrifice"/> whose opening falls by a smooth step as the pressure of a pilot (the tank with the float) rises from the
/// one at which it begins to close to that plus the band.
/// </summary>
/// <remarks>
/// Sees, third, the pilot. Parameters: K [kg/s/√Pa], ε [Pa] as in the orifice, begins to close at [Pa], 1/band [1/Pa], offset [Pa]. Input: opening 0…1.
/// Common practice, no source.
/// </remarks>
public readonly struct FloatValve : ILaw
{
    /// <summary>Where the pilot's pressure at which it begins to close stands in the sheet: a stuck float changes it.</summary>
    public const int BeginParameter = 2;

    public static int Potentials => 3;

    public static int Flows => 1;

    public static int Parameters => 5;

    public static int Inputs => 1;

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static void Evaluate<T>(ref T p, ref T k, ref T u, ref T q, ref T dq)
        where T : struct, IReal<T>
    {
        T x = p + Unsafe.Add(ref k, 4) - Unsafe.Add(ref p, 1);
        T perBand = Unsafe.Add(ref k, 3);
        T closed = Smooth.Step((Unsafe.Add(ref p, 2) - Unsafe.Add(ref k, 2)) * perBand, out T closedSlope);
        T root = Smooth.SignedRoot(x, Unsafe.Add(ref k, 1), out T rootSlope);
        T conductance = k * u;
        T open = conductance * (T.Of(1) - closed);
        q = open * root;
        T d = open * rootSlope;
        dq = d;
        Unsafe.Add(ref dq, 1) = -d;
        Unsafe.Add(ref dq, 2) = -(conductance * closedSlope * perBand * root);
    }

    /// <summary>The sheet of a valve.</summary>
    /// <param name="orifice">The sheet of the <see cref="LiquidOrifice"/> it is when open.</param>
    /// <param name="begin">The pilot's pressure at which it begins to close, Pa: p_s + ρ·g·level.</param>
    /// <param name="band">From there to shut, Pa, above 0.</param>
    public static double[] ParametersOf(double[] orifice, double begin, double band)
    {
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(band);
        return [orifice[0], orifice[1], begin, 1 / band, orifice[2]];
    }
}
