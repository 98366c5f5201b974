namespace Sightglass.Network.Step;

/// <summary>Where a guard that is negative at both ends of a step rises to zero in between.</summary>
internal static class Peak
{
    /// <summary>The share of the step at which the parabola through three values is greatest, if it is not negative there; else 1.</summary>
    /// <param name="atStart">At the start; where it is not negative, nothing is looked for.</param>
    /// <param name="atMiddle">Half-way.</param>
    /// <param name="atEnd">At the end; where it is not negative, nothing is looked for.</param>
    public static double ShareOf(double atStart, double atMiddle, double atEnd)
    {
        if (!(atStart < 0 && atEnd < 0))
        {
            return 1;
        }

        double slope = (4 * atMiddle) - (3 * atStart) - atEnd;
        double bend = 2 * (atStart + atEnd - (2 * atMiddle));
        bool inside = bend < 0 && slope > 0 && slope < -2 * bend;
        return inside && atStart - (slope * slope / (4 * bend)) >= 0 ? slope / (-2 * bend) : 1;
    }
}
