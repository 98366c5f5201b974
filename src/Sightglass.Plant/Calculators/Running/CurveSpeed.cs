using Sightglass.Network.Laws.Common;

namespace Sightglass.Plant.Calculators.Running;

/// <summary>Speed and cant on curves, in inches, miles an hour and degrees of curve as the rule has them. Source: 49 CFR 213.57 and appendix A (read). Local rules and the timetable decide.</summary>
public static class CurveSpeed
{
    private const double RuleFactor = 0.0007;

    /// <summary>mph at which a curve may be run: √((E_a + E_u)/(0.0007·D)). Printed tables round to a mile an hour.</summary>
    /// <param name="cantInches">E_a, of the outer rail.</param>
    /// <param name="unbalanceInches">E_u that is allowed.</param>
    /// <param name="curveDegrees">D, above 0.</param>
    public static double MilesAnHour(double cantInches, double unbalanceInches, double curveDegrees) => Math.Sqrt((cantInches + unbalanceInches) / (RuleFactor * curveDegrees));

    /// <summary>Cant at which neither rail is pressed more, in: 0.0007·D·V².</summary>
    public static double BalanceInches(double curveDegrees, double milesAnHour) => RuleFactor * curveDegrees * milesAnHour * milesAnHour;

    /// <summary>The same by physics, in the unit of the base: b·v²/(g·r).</summary>
    /// <param name="railBase">Between the rails' middles; 60 in is used with the rule.</param>
    /// <param name="speed">m/s.</param>
    /// <param name="radius">m.</param>
    public static double Balance(double railBase, double speed, double radius) => railBase * speed * speed / (Physical.Gravity * radius);

    /// <summary>Degrees by which a standing vehicle leans: asin(E/b).</summary>
    public static double LeanDegrees(double cant, double railBase) => Math.Asin(cant / railBase) * 180 / Math.PI;
}
