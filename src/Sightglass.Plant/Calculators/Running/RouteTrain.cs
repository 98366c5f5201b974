using System.Collections.Immutable;
using Sightglass.Network.Laws.Motion;

namespace Sightglass.Plant.Calculators.Running;

/// <summary>A train as it runs over a route. SI.</summary>
public sealed record RouteTrain
{
    public required double Mass { get; init; }

    /// <summary>By which turning parts add to the mass.</summary>
    public double TurningShare { get; init; } = BrakingForce.TurningParts;

    public required double Length { get; init; }

    /// <summary>Sheet of <see cref="SpeedResistance"/> of the whole train.</summary>
    public required ImmutableArray<double> Resistance { get; init; }

    /// <summary>W at the rail.</summary>
    public required double Power { get; init; }

    /// <summary>N on driven axles that pull.</summary>
    public required double DrivenWeight { get; init; }

    /// <summary>N that the motors give at most, whatever the rail holds.</summary>
    public double Most { get; init; } = double.PositiveInfinity;

    /// <summary>m/s² that the brakes give when they are full, on the level and with nothing else resisting.</summary>
    public required double Deceleration { get; init; }

    /// <summary>s until they begin.</summary>
    public double DeadSeconds { get; init; }

    /// <summary>s from then until they are full.</summary>
    public double BuildUpSeconds { get; init; }

    /// <summary>Whether it sands where adhesion does not hold its effort.</summary>
    public bool Sands { get; init; }

    /// <summary>Power at the rail over that at the engine's shaft.</summary>
    public double Efficiency { get; init; } = 1;

    /// <summary>W at the shaft for the cars and the machine's own needs, all the time.</summary>
    public double HeadEnd { get; init; }

    /// <summary>kg of fuel for each J at the shaft.</summary>
    public double Consumption { get; init; }

    internal double Inertia => Mass * (1 + TurningShare);
}
