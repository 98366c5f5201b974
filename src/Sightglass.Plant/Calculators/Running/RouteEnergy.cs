namespace Sightglass.Plant.Calculators.Running;

/// <summary>Where the work of a run went, J: what was pulled and what it had at the start is what resisted, was lifted, braked away and is left.</summary>
/// <param name="Pulled">At the rail.</param>
/// <param name="Resisted">By air, bearings and rails, curves included.</param>
/// <param name="Lifted">Against grades; below 0 where it came down.</param>
/// <param name="Braked">Into brakes.</param>
/// <param name="Before">Of motion at the start, turning parts included.</param>
/// <param name="Left">Of motion at the end.</param>
public readonly record struct RouteEnergy(double Pulled, double Resisted, double Lifted, double Braked, double Before, double Left)
{
    /// <summary>What does not add up: 0 but for rounding.</summary>
    public double Open => Pulled + Before - Resisted - Lifted - Braked - Left;
}
