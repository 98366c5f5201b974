using System.Runtime.CompilerServices;
using Sightglass.Basics.Numbers;
using Sightglass.Network.Laws.Common;

namespace Sightglass.Reference.Tests.Laws;

/// <summary>L of the reference problems.</summary>
internal static class SoftClamp
{
    /// <summary>L(v) = lo + P(v−lo) − P(v−hi), P rounded over ±δ; and its slope.</summary>
    /// <param name="perTwo">1/(2δ).</param>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static T Of<T>(T v, T low, T high, T delta, T perTwo, out T slope)
        where T : struct, IReal<T>
    {
        T result = low + Smooth.Positive(v - low, delta, perTwo, out T rises) - Smooth.Positive(v - high, delta, perTwo, out T stops);
        slope = rises - stops;
        return result;
    }
}
