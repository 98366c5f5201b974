namespace Sightglass.Plant.Calculators.Running;

/// <summary>Times and distances of speeding up, from standstill. Closed forms, derived; masses include what turns.</summary>
public static class Acceleration
{
    /// <summary>
    /// s and m to a speed with a force up to which power decides, nothing resisting: to P/F with F, from there with P. t = m·v₁/F + m(v² − v₁²)/2P, x = m·v₁²/2F + m(v³ − v₁³)/3P.
    /// </summary>
    /// <param name="kilograms">m, with what turns (some 5 % more, common practice).</param>
    /// <param name="newtons">F, the most.</param>
    /// <param name="watts">P at the rail.</param>
    /// <param name="speed">v, m/s.</param>
    public static (double Seconds, double Metres) ByForceAndPower(double kilograms, double newtons, double watts, double speed)
    {
        double corner = Math.Min(watts / newtons, speed);
        double seconds = (kilograms * corner / newtons) + (kilograms * ((speed * speed) - (corner * corner)) / (2 * watts));
        double metres = (kilograms * corner * corner / (2 * newtons)) + (kilograms * ((speed * speed * speed) - (corner * corner * corner)) / (3 * watts));
        return (seconds, metres);
    }

    /// <summary>
    /// s and m to a speed with a constant force against a drag C·v²: t = m/√(F·C)·artanh(v√(C/F)), x = −m/(2C)·ln(1 − C·v²/F). Endless from <see cref="FinalSpeed"/> up.
    /// </summary>
    /// <param name="newtons">F, left when all that does not grow with speed is taken off.</param>
    /// <param name="drag">C, N·s²/m², above 0.</param>
    public static (double Seconds, double Metres) AgainstDrag(double kilograms, double newtons, double drag, double speed)
    {
        double share = speed * Math.Sqrt(drag / newtons);
        if (!(share < 1))
        {
            return (double.PositiveInfinity, double.PositiveInfinity);
        }

        double artanh = Real.Log((1 + share) / (1 - share)) / 2;
        return (kilograms / Math.Sqrt(newtons * drag) * artanh, -kilograms / (2 * drag) * Real.Log(1 - (share * share)));
    }

    /// <summary>m/s that is never quite reached: √(F/C).</summary>
    public static double FinalSpeed(double newtons, double drag) => Math.Sqrt(newtons / drag);

    /// <summary>N to change the speed of a mass over a distance: m(v² − v₀²)/2x.</summary>
    public static double NewtonsOverDistance(double kilograms, double from, double to, double metres) => kilograms * ((to * to) - (from * from)) / (2 * metres);
}
