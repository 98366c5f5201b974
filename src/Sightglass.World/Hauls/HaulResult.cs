using System.Collections.Immutable;
using Sightglass.Plant.Calculators.Running;

namespace Sightglass.World.Hauls;

/// <summary>A train of the book over a route of the book.</summary>
public sealed record HaulResult
{
    public required HaulRequest Request { get; init; }

    public required HaulTrain Train { get; init; }

    /// <summary>As it went into the equation of motion.</summary>
    public required RouteTrain Running { get; init; }

    public required ImmutableArray<RouteStretch> Stretches { get; init; }

    public required RouteOutcome Outcome { get; init; }

    /// <summary>Of the whole run, stands included; m from the start of the route.</summary>
    public required ImmutableArray<RoutePoint> Points { get; init; }

    /// <summary>Places in their order, the end last.</summary>
    public required ImmutableArray<HaulCall> Calls { get; init; }

    /// <summary>Where the work went, J.</summary>
    public required RouteEnergy Energy { get; init; }

    /// <summary>Of each machine that works.</summary>
    public required ImmutableArray<UnitFuel> Fuel { get; init; }

    public required RulingGrade Ruling { get; init; }

    /// <summary>m/s that it would keep for ever on the ruling grade, all out; 0 where it does not move there.</summary>
    public required double Balance { get; init; }

    public required BuildUp Service { get; init; }

    public required BuildUp Emergency { get; init; }

    public required ImmutableArray<HaulStop> Stops { get; init; }

    public required ImmutableArray<HaulFall> Falls { get; init; }

    /// <summary>Null where it did not arrive or an engine stopped.</summary>
    public required HaulRange? Range { get; init; }

    public RoutePoint End => Points[^1];

    /// <summary>The machine whose engine stops first for want of fuel, or null.</summary>
    public UnitFuel? Starved => Fuel.Where(f => f.StoppedAt is not null).MinBy(f => f.StoppedAt);

    /// <summary>m of its head from the start of the route at a moment of the run.</summary>
    public double MetresAt(double seconds)
    {
        int i = After(p => p.Seconds, seconds);
        (RoutePoint a, RoutePoint b) = (Points[Math.Max(0, i - 1)], Points[i]);
        return b.Seconds > a.Seconds ? a.Metres + ((b.Metres - a.Metres) * (Math.Clamp(seconds, a.Seconds, b.Seconds) - a.Seconds) / (b.Seconds - a.Seconds)) : b.Metres;
    }

    /// <summary>Where it is when its head comes to a place, in m from the start of the route; null where it never does.</summary>
    public RoutePoint? Passing(double metres) => End.Metres < metres ? null : Points[After(p => p.Metres, metres)];

    private int After(Func<RoutePoint, double> of, double value)
    {
        int low = 0, high = Points.Length - 1;
        while (low < high)
        {
            int middle = (low + high) / 2;
            (low, high) = of(Points[middle]) < value ? (middle + 1, high) : (low, middle);
        }

        return low;
    }
}
