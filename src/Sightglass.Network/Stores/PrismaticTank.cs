using System.Runtime.CompilerServices;
using Sightglass.Basics.Numbers;
using Sightglass.Network.Laws.Common;

namespace Sightglass.Network.Stores;

/// <summary>
/// A tank with upright walls and a flat rectangular floor that may be tilted along one axis. Its potential is the pressure that the level surface,
/// drawn on over a dry centre if need be, gives at the centre of the floor: p = p_s + ρ·g·cosθ·h. A port at s metres along the floor (uphill
/// positive) and z above it stands at p − ρ·g·cosθ·(z + s·tanθ), whatever the tilt.
/// </summary>
/// <remarks>
/// With mean depth z = V/A, half-rise of the floor w = (a/2)·tanθ and s = z/w: h = z while the floor is wet all over (s ≥ 1), else the
/// wedge h = w(2√s − 1); the same upside down below the roof. Geometry, derived. The last 1/400 of a wedge (of w, mean depth) is a parabola
/// instead of a root, so that the surface never shrinks below a thirtieth of the floor. A level floor counts as one with w = <see cref="Unevenness"/>.
/// Above the roof see <see cref="VentRiser"/>. Parameters: 1/ρ [m³/kg], ρ·g·cosθ [Pa/m], p_s [Pa], 1/A [1/m²], w [m], depth [m],
/// full volume [m³], 1/riser [1/m²].
/// </remarks>
public readonly struct PrismaticTank : IStore
{
    /// <summary>Where ρ·g·cosθ and the half-rise stand in the sheet: what a change of tilt changes.</summary>
    public const int WeightParameter = 1;

    public const int HalfRiseParameter = 4;

    /// <summary>Half-rise that any floor has at least, m, so that the wedge never divides by nothing.</summary>
    public const double Unevenness = 1e-6;

    private const double RoundedRootShare = 0.05;

    public static int Amounts => 1;

    public static int Parameters => 8;

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static void Evaluate<T>(ref T m, ref T k, ref T p, ref T c)
        where T : struct, IReal<T>
    {
        T inverseDensity = k;
        T weight = Unsafe.Add(ref k, 1);
        T inverseArea = Unsafe.Add(ref k, 3);
        T inverseRiser = Unsafe.Add(ref k, 7);
        T volume = m * inverseDensity;
        T riser = VentRiser.Contents(volume, Unsafe.Add(ref k, 6), inverseRiser, out T share);
        T height = Level((volume - riser) * inverseArea, Unsafe.Add(ref k, 4), Unsafe.Add(ref k, 5), out T rise);
        p = Unsafe.Add(ref k, 2) + (weight * (height + (riser * inverseRiser)));
        T perVolume = (rise * inverseArea * (T.Of(1) - share)) + (inverseRiser * share);
        c = T.Of(1) / (weight * inverseDensity * perVolume);
    }

    /// <summary>The sheet of a tank.</summary>
    /// <param name="area">Floor, m².</param>
    /// <param name="length">Of the floor along the axis of tilt, m.</param>
    /// <param name="depth">From floor to roof, m; more than length·tilt.</param>
    /// <param name="density">kg/m³.</param>
    /// <param name="tilt">tanθ along the axis; its sign does not matter here.</param>
    /// <param name="surfacePressure">Pa absolute.</param>
    /// <param name="riserArea">Section of the vent riser, m², at least 1 cm².</param>
    public static double[] ParametersOf(
        double area, double length, double depth, double density, double tilt = 0, double surfacePressure = Physical.Atmosphere, double riserArea = 5e-4)
    {
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(area);
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(density);
        ArgumentOutOfRangeException.ThrowIfLessThan(riserArea, VentRiser.SmallestArea);
        double halfRise = HalfRise(length, tilt);
        ArgumentOutOfRangeException.ThrowIfLessThanOrEqual(depth, 2 * halfRise);
        return [1 / density, Weight(density, tilt), surfacePressure, 1 / area, halfRise, depth, area * depth, 1 / riserArea];
    }

    /// <summary>ρ·g·cosθ, Pa per metre of depth measured at right angles to the floor.</summary>
    public static double Weight(double density, double tilt) => density * Physical.Gravity / Math.Sqrt(1 + (tilt * tilt));

    /// <summary>Half the rise of the floor along the axis of tilt, m.</summary>
    public static double HalfRise(double length, double tilt) => Math.Max(length * Math.Abs(tilt) / 2, Unevenness);

    /// <summary>Height of the surface over the floor's centre for a mean depth z [m], and its slope.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private static T Level<T>(T z, T halfRise, T depth, out T slope)
        where T : struct, IReal<T>
    {
        T below = depth - z;
        T upper = T.Less(below, z);
        T nearer = T.Min(z, below);
        T wet = T.LessOrEqual(halfRise, nearer);
        T root = Smooth.RoundedRoot(nearer / halfRise, T.Of(RoundedRootShare), out T rootSlope);
        T height = T.Select(wet, nearer, halfRise * ((T.Of(2) * root) - T.Of(1)));
        slope = T.Select(wet, T.Of(1), T.Of(2) * rootSlope);
        return T.Select(upper, depth - height, height);
    }
}
