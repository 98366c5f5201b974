namespace Sightglass.Plant.Calculators.Running;

/// <summary>What a locomotive can haul, by the rule of a US Army manual of rail transport (read, with its worked example). All weights in short tons, forces in pounds.</summary>
public static class Tonnage
{
    /// <summary>lb taken off for each ton of the locomotive itself.</summary>
    private const double OwnPoundsPerTon = 20;

    /// <summary>lb at the drawbar: what the wheels pull less what moves the locomotive.</summary>
    public static double DrawbarPounds(double tractivePounds, double locomotiveTons) => tractivePounds - (OwnPoundsPerTon * locomotiveTons);

    /// <summary>Gross trailing tons before they are rounded.</summary>
    /// <param name="drawbarPounds">At the drawbar, all units together.</param>
    /// <param name="weather">Factor for the weather, such as 0.80.</param>
    /// <param name="rollingPoundsPerTon">Of the cars on straight and level track.</param>
    public static double Tons(double drawbarPounds, double weather, double rollingPoundsPerTon, double gradePercent, double curveDegrees) =>
        drawbarPounds * weather / (rollingPoundsPerTon + TrackResistance.PoundsPerTon(gradePercent, curveDegrees));

    /// <summary>The same as the manual prints it: rounded up.</summary>
    public static int Printed(double tons) => (int)Math.Ceiling(tons);
}
