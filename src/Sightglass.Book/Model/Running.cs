using System.Collections.Immutable;
using Sightglass.Basics.Diagnostics;

namespace Sightglass.Book.Model;

/// <summary>How a vehicle runs: what a run over a route, and what a train pulls and holds, is worked out from.</summary>
public sealed record Running(Span Span)
{
    /// <summary>kg, ready to run, without what is in its fuel tanks.</summary>
    public required double Mass { get; init; }

    /// <summary>How many, 1 or more.</summary>
    public required int Axles { get; init; }

    public required RunningResistance Resistance { get; init; }

    /// <summary>N at the rail with which its hand or parking brake holds it; null where it is not known.</summary>
    public double? HandBrake { get; init; }

    /// <summary>Null for a vehicle that is hauled.</summary>
    public Pulling? Pulls { get; init; }

    /// <summary>Speed, m/s, rising, and force at the rail, N; empty where there is none. Told beside the run, never counted for stopping.</summary>
    public ImmutableArray<(double Speed, double Force)> DynamicBrake { get; init; } = [];

    /// <summary>How its air brakes are handled; null where it has no handle.</summary>
    public BrakeHandling? Brakes { get; init; }
}
