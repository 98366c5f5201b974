using System.Runtime.CompilerServices;
using Sightglass.Basics.Numbers;
using Sightglass.Network.Laws.Common;

namespace Sightglass.Network.Stores;

/// <summary>
/// What stands above a full tank: a narrow riser in which the level goes on rising, so that an overflow is an ordinary path from a port at
/// its top. The volume is shared between the tank proper and the riser with a rounded corner of <see cref="Corner"/> metres of riser either side
/// of full; there the level is too high by at most a quarter of that.
/// </summary>
internal static class VentRiser
{
    /// <summary>Half the height of riser over which the corner is rounded, m.</summary>
    public const double Corner = 0.02;

    /// <summary>Smallest section allowed, m²: below it the store is too stiff for its worth.</summary>
    public const double SmallestArea = 1e-4;

    /// <summary>How much of <paramref name="volume"/> stands in the riser [m³], and its share of what is added.</summary>
    /// <param name="full">Volume of the tank without the riser, m³.</param>
    /// <param name="inverseArea">1/section of the riser, 1/m².</param>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static T Contents<T>(T volume, T full, T inverseArea, out T share)
        where T : struct, IReal<T> =>
        Smooth.Positive(volume - full, T.Of(Corner) / inverseArea, T.Of(0.5 / Corner) * inverseArea, out share);
}
