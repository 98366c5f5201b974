namespace Sightglass.Plant.Calculators.Electric;

/// <summary>A generating set whose governor lets the speed fall with load. Source: any text of power systems.</summary>
public static class Droop
{
    /// <summary>Hz at a load: f₀·(1 − droop·P/P_rated).</summary>
    /// <param name="droop">Share by which it falls from none to the rated load, such as 0.03.</param>
    public static double Hertz(double hertzWithoutLoad, double droop, double watts, double ratedWatts) => hertzWithoutLoad * (1 - (droop * watts / ratedWatts));

    /// <summary>Share that each of two sets side by side takes when they have the same speed without load: in proportion to rating over droop.</summary>
    public static double ShareOfFirst(double ratedFirst, double droopFirst, double ratedSecond, double droopSecond) =>
        ratedFirst / droopFirst / ((ratedFirst / droopFirst) + (ratedSecond / droopSecond));
}
