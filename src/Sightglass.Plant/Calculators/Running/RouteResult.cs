using System.Collections.Immutable;

namespace Sightglass.Plant.Calculators.Running;

/// <summary>A run over a route.</summary>
/// <param name="Outcome">How it ended.</param>
/// <param name="Points">One a step.</param>
/// <param name="Fuel">kg.</param>
/// <param name="Energy">Where the work went.</param>
public sealed record RouteResult(RouteOutcome Outcome, ImmutableArray<RoutePoint> Points, double Fuel, RouteEnergy Energy)
{
    public RoutePoint End => Points[^1];
}
