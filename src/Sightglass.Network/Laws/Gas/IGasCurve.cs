using Sightglass.Basics.Numbers;

namespace Sightglass.Network.Laws.Gas;

/// <summary>
/// How the square of a gas flow, as a share of its greatest, follows from s: the pressure difference over that at which the flow no longer grows. 0 at 0, 1 with slope
/// 0 at 1, rising between.
/// </summary>
internal interface IGasCurve
{
    /// <summary>The share for s from 0 to 1, and its slope.</summary>
    /// <param name="k">The curve's own parameters.</param>
    static abstract T Square<T>(T s, ref T k, out T slope)
        where T : struct, IReal<T>;
}
