namespace Sightglass.World.Hauls;

/// <summary>A fall on which a train gains speed by itself.</summary>
/// <param name="From">m from the start of the route.</param>
/// <param name="To">m.</param>
/// <param name="Grade">Rise over run, below 0.</param>
/// <param name="Limit">m/s.</param>
/// <param name="Asks">N that hold it at the limit.</param>
/// <param name="Dynamic">N that the dynamic brakes of the machines that work give at that speed. They are told and not counted: they fade, fail, and act on some axles only.</param>
public sealed record HaulFall(double From, double To, double Grade, double Limit, double Asks, double Dynamic)
{
    public bool IsHeldByDynamic => Dynamic >= Asks;
}
