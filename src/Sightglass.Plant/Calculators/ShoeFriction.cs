namespace Sightglass.Plant.Calculators;

/// <summary>Friction of cast-iron brake shoes.</summary>
public static class ShoeFriction
{
    private const double Gravity = 9.81;

    /// <summary>
    /// μ = 0.6·((16/g)·P + 100)/((80/g)·P + 100)·(v + 100)/(5v + 100) with g = 9.81 (Karwatzki; European brake texts, from memory). Tests of real shoes scatter by ±15 %.
    /// </summary>
    /// <param name="force">P, on one shoe, N.</param>
    /// <param name="speed">v, m/s, not below 0.</param>
    public static double CastIron(double force, double speed)
    {
        double p = force / 1000;
        double v = speed * 3.6;
        return 0.6 * ((16 / Gravity * p) + 100) / ((80 / Gravity * p) + 100) * (v + 100) / ((5 * v) + 100);
    }
}
