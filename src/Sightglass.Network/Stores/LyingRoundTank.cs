using System.Runtime.CompilerServices;
using Sightglass.Basics.Numbers;
using Sightglass.Network.Laws.Common;

namespace Sightglass.Network.Stores;

/// <summary>
/// A round tank lying on its side, with flat ends. Its potential is the pressure at its lowest line: p = p_s + ρ·g·cosθ·h, with h from the exact
/// segment of a circle (<see cref="CircularSegment"/>: to 4e-12 of the radius). Source: circular segment (Perry's handbook, from memory).
/// </summary>
/// <remarks>
/// A tilt along its axis is not followed: h is the height at the middle for small tilts, while neither end is dry or full. Above full see
/// <see cref="VentRiser"/>. Parameters: 1/ρ [m³/kg], ρ·g·cosθ [Pa/m], p_s [Pa], 1/volume [1/m³], radius [m], volume [m³], 1/riser [1/m²].
/// </remarks>
public readonly struct LyingRoundTank : IStore
{
    public static int Amounts => 1;

    public static int Parameters => 7;

    [MethodImpl(MethodImplOptions.NoInlining)]
    public static void Evaluate<T>(ref T m, ref T k, ref T p, ref T c)
        where T : struct, IReal<T>
    {
        T inverseDensity = k;
        T weight = Unsafe.Add(ref k, 1);
        T inverseFull = Unsafe.Add(ref k, 3);
        T radius = Unsafe.Add(ref k, 4);
        T inverseRiser = Unsafe.Add(ref k, 6);
        T volume = m * inverseDensity;
        T riser = VentRiser.Contents(volume, Unsafe.Add(ref k, 5), inverseRiser, out T share);
        T height = CircularSegment.Height((volume - riser) * inverseFull, out T rise);
        p = Unsafe.Add(ref k, 2) + (weight * ((radius * height) + (riser * inverseRiser)));
        T perVolume = (radius * rise * inverseFull * (T.Of(1) - share)) + (inverseRiser * share);
        c = T.Of(1) / (weight * inverseDensity * perVolume);
    }

    /// <summary>The sheet of a tank.</summary>
    /// <param name="radius">m.</param>
    /// <param name="length">m.</param>
    /// <param name="density">kg/m³.</param>
    /// <param name="tilt">tanθ; only weakens the weight, by cosθ.</param>
    /// <param name="surfacePressure">Pa absolute.</param>
    /// <param name="riserArea">Section of the vent riser, m², at least 1 cm².</param>
    public static double[] ParametersOf(
        double radius, double length, double density, double tilt = 0, double surfacePressure = Physical.Atmosphere, double riserArea = 5e-4)
    {
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(radius);
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(length);
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(density);
        ArgumentOutOfRangeException.ThrowIfLessThan(riserArea, VentRiser.SmallestArea);
        double full = Volume(radius, length);
        return [1 / density, PrismaticTank.Weight(density, tilt), surfacePressure, 1 / full, radius, full, 1 / riserArea];
    }

    /// <summary>m³.</summary>
    public static double Volume(double radius, double length) => Math.PI * radius * radius * length;
}
