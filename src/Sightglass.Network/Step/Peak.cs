using System.Runtime.CompilerServices;
using Sightglass.Basics.Numbers;

namespace Sightglass.Network.Step;

/// <summary>Where a guard that is negative at both ends of a step rises to zero in between.</summary>
internal static class Peak
{
    /// <summary>The share of the step at which the parabola through three values is greatest, if it is not negative there; else 1.</summary>
    /// <param name="atStart">At the start; where it is not negative, nothing is looked for.</param>
    /// <param name="atMiddle">Half-way.</param>
    /// <param name="atEnd">At the end; where it is not negative, nothing is looked for.</param>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static T ShareOf<T>(T atStart, T atMiddle, T atEnd)
        where T : struct, IReal<T>
    {
        T zero = T.Of(0);
        T slope = (T.Of(4) * atMiddle) - (T.Of(3) * atStart) - atEnd;
        T bend = T.Of(2) * (atStart + atEnd - (T.Of(2) * atMiddle));
        T below = T.And(T.Less(atStart, zero), T.Less(atEnd, zero));
        T inside = T.And(T.And(T.Less(bend, zero), T.Less(zero, slope)), T.Less(slope, T.Of(-2) * bend));
        T reached = T.LessOrEqual(zero, atStart - (slope * slope / (T.Of(4) * bend)));
        return T.Select(T.And(T.And(below, inside), reached), slope / (T.Of(-2) * bend), T.Of(1));
    }
}
