using System.Runtime.CompilerServices;
using Sightglass.Basics.Numbers;
using Sightglass.Network.Laws.Common;
using Sightglass.Network.Stores;

namespace Sightglass.Network.Laws.Liquid.Ends;

/// <summary>
/// A port in the wall of a tank. It feels the liquid that stands above it, and where none does the pressure over the surface; it draws liquid while covered and
/// air while not, passing from one to the other as the surface sinks across the mouth. Sees the tank's pressure.
/// </summary>
/// <remarks>
/// With y = p + offset − p_s, the head over the middle of the mouth, and δ = ρ·g·cosθ·(its half-height): pressure p_s + max(0, y) rounded over ±δ (too high by
/// at most δ/4 at y = 0), liquid share a smooth step from y = −δ to δ. Parameters: offset [Pa], p_s [Pa], δ [Pa].
/// </remarks>
public readonly struct TankPort : ILiquidEnd
{
    /// <summary>Where the offset stands in the sheet: what a change of tilt changes.</summary>
    public const int OffsetParameter = 0;

    public static int Potentials => 1;

    public static int Parameters => 3;

    [MethodImpl(MethodImplOptions.NoInlining)]
    public static void Evaluate<T>(ref T p, ref T k, out LiquidEnd<T> end)
        where T : struct, IReal<T>
    {
        T surface = Unsafe.Add(ref k, 1);
        T delta = Unsafe.Add(ref k, 2);
        T head = p + k - surface;
        T perDelta = T.Of(0.5) / delta;
        T cover = Smooth.Step((head + delta) * perDelta, out T coverSlope);
        coverSlope *= perDelta;
        end = default;
        end.Pressure = surface + Smooth.Positive(head, delta, perDelta, out end.PressureSlope);
        end.Wet.Value = cover;
        end.Wet.Slope = coverSlope;
        end.Air.Value = (T.Of(1) - cover) * surface;
        end.Air.Slope = -(coverSlope * surface);
    }

    /// <summary>The sheet of a port.</summary>
    /// <param name="height">Of the middle of the mouth over the tank's reference (its floor), m. A mouth that would reach below the floor is moved up to stand on it.</param>
    /// <param name="halfHeight">Half the mouth's height, above 0, m: the radius of a hole.</param>
    /// <param name="density">kg/m³.</param>
    /// <param name="tilt">tanθ, positive where the floor rises towards positive <paramref name="along"/>.</param>
    /// <param name="along">Position along the axis of tilt, from the middle of the floor, m.</param>
    /// <param name="surfacePressure">Pa absolute, as in the store.</param>
    public static double[] ParametersOf(
        double height, double halfHeight, double density, double tilt = 0, double along = 0, double surfacePressure = Physical.Atmosphere)
    {
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(halfHeight);
        double weight = PrismaticTank.Weight(density, tilt);
        return [-weight * (Math.Max(height, halfHeight) + (along * tilt)), surfacePressure, weight * halfHeight];
    }
}
