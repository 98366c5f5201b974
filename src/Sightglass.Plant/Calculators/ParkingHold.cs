namespace Sightglass.Plant.Calculators;

/// <summary>What holds a standing vehicle or train on a grade. Source: statics.</summary>
public static class ParkingHold
{
    /// <summary>Force along the rail, in the unit of the weight: weight·sin(atan grade).</summary>
    /// <param name="grade">Rise over run, 0.03 for 3 %.</param>
    public static double Force(double weight, double grade) => weight * Math.Sin(Math.Atan(grade));

    /// <summary>Force on the shoes that holds it.</summary>
    /// <param name="friction">Of shoe on wheel at rest.</param>
    public static double Shoes(double force, double friction) => force / friction;

    /// <summary>
    /// Hand brakes to set on a train: the least whole number that holds 1.2 times the rule-of-thumb force grade·weight. Local rules and the timetable decide; this is arithmetic.
    /// </summary>
    /// <param name="weight">Of the train, in the unit of the chain's pull.</param>
    /// <param name="grade">Rise over run.</param>
    /// <param name="chain">Pull on the chain of one hand brake.</param>
    /// <param name="lever">Shoe force over chain pull.</param>
    /// <param name="efficiency">Of the rigging, 0…1.</param>
    /// <param name="friction">Of shoe on wheel at rest.</param>
    public static int HandBrakes(double weight, double grade, double chain, double lever, double efficiency, double friction) =>
        (int)Math.Ceiling(1.2 * grade * weight / (chain * lever * efficiency * friction));
}
