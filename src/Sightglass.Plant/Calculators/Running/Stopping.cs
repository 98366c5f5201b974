using Sightglass.Network.Laws.Common;

namespace Sightglass.Plant.Calculators.Running;

/// <summary>Times and distances of stopping. Formulas read in a stored calculator page and a signal engineering paper; EN 14531-1 from memory. Dynamic brake is never counted.</summary>
public static class Stopping
{
    /// <summary>
    /// s and m with nothing for a dead time, then a deceleration that builds up evenly: v_b = v − a·t_b/2, x = v·t_d + v·t_b − a·t_b²/6 + v_b²/2a, t = t_d + t_b + v_b/a. Where it stands before
    /// the brake is full the build-up is followed as far as it goes.
    /// </summary>
    /// <param name="speed">v, m/s.</param>
    /// <param name="deceleration">a when full, m/s², above 0.</param>
    /// <param name="deadSeconds">t_d.</param>
    /// <param name="buildUpSeconds">t_b, 0 or more.</param>
    public static (double Seconds, double Metres) WithBuildUp(double speed, double deceleration, double deadSeconds, double buildUpSeconds)
    {
        double left = speed - (deceleration * buildUpSeconds / 2);
        if (left < 0)
        {
            // v = a·t²/(2·t_b) is used up within the build-up.
            double t = Math.Sqrt(2 * speed * buildUpSeconds / deceleration);
            return (deadSeconds + t, (speed * (deadSeconds + t)) - (deceleration * t * t * t / (6 * buildUpSeconds)));
        }

        double metres = (speed * (deadSeconds + buildUpSeconds)) - (deceleration * buildUpSeconds * buildUpSeconds / 6) + (left * left / (2 * deceleration));
        return (deadSeconds + buildUpSeconds + (left / deceleration), metres);
    }

    /// <summary>m by the usual simplification, half of the build-up counted as dead: longer than <see cref="WithBuildUp"/> by a·t_b²/24.</summary>
    public static double MetresByEquivalentTime(double speed, double deceleration, double deadSeconds, double buildUpSeconds) =>
        (speed * (deadSeconds + (buildUpSeconds / 2))) + (speed * speed / (2 * deceleration));

    /// <summary>m on a grade: v²/(2(a + g·sin(atan i))). Endless where the grade pulls more than the brake holds.</summary>
    /// <param name="grade">Rise over run, above 0 uphill.</param>
    public static double MetresOnGrade(double speed, double deceleration, double grade)
    {
        double all = deceleration + (Physical.Gravity * TrackResistance.GradeShare(grade));
        return all > 0 ? speed * speed / (2 * all) : double.PositiveInfinity;
    }

    /// <summary>J of a moving train: ½·m·(1 + share)·v².</summary>
    /// <param name="turningShare">By which turning parts add to the mass.</param>
    public static double Energy(double kilograms, double speed, double turningShare = BrakingForce.TurningParts) => kilograms * (1 + turningShare) * speed * speed / 2;
}
