using System.Runtime.CompilerServices;
using Sightglass.Basics.Numbers;

namespace Sightglass.Network.Laws.Gas;

/// <summary>s·(2 − s): the ellipse of ISO 6358. No parameters.</summary>
internal readonly struct EllipseCurve : IGasCurve
{
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static T Square<T>(T s, ref T k, out T slope)
        where T : struct, IReal<T>
    {
        T left = T.Of(2) - s;
        slope = left - s;
        return s * left;
    }
}
