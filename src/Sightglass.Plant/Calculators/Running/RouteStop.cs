using System.Collections.Immutable;
using Sightglass.Network.Laws.Common;
using Sightglass.Network.Laws.Motion;

namespace Sightglass.Plant.Calculators.Running;

/// <summary>
/// A train coming to a stand somewhere on a route, with brakes that build up as they do: equation of motion by brake, resistance, grade and curve, nothing pulling. Dynamic brake is never counted.
/// Source: energy; each step moves by the mean of its speeds.
/// </summary>
/// <param name="Seconds">Since the handle was moved; endless where the grade pulls more than the brakes hold.</param>
/// <param name="Metres">Of its head in that time.</param>
/// <param name="Points">Seconds, m on the route and m/s.</param>
public sealed record RouteStop(double Seconds, double Metres, ImmutableArray<RoutePoint> Points)
{
    /// <summary>s after which a train that still rolls is not held.</summary>
    private const double Longest = 3600;

    /// <summary>Speed over that at the start from which it has run away.</summary>
    private const double Away = 1.5;

    /// <param name="train">Its mass, length and resistance; its own deceleration is not used.</param>
    /// <param name="stretches">Of the route.</param>
    /// <param name="head">m from the start of the route.</param>
    /// <param name="speed">m/s there, 0 or more.</param>
    /// <param name="newtons">What the brakes give at the rail, by s since the handle was moved and m of the head on the route.</param>
    /// <param name="step">s.</param>
    public static RouteStop Of(RouteTrain train, ImmutableArray<RouteStretch> stretches, double head, double speed, Func<double, double, double> newtons, double step = 0.05)
    {
        ArgumentNullException.ThrowIfNull(train);
        ArgumentNullException.ThrowIfNull(newtons);
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(step);
        RouteProfile route = new(stretches, train.Length);
        double weight = train.Mass * Physical.Gravity;
        List<RoutePoint> points = [new(0, head, speed, 0)];
        (double t, double x, double v) = (0, head, speed);
        while (v > 0 && t < Longest && v <= (speed * Away) + 5)
        {
            (double grade, double curve) = route.ShareAt(x);
            double against = newtons(t + (step / 2), x) + SpeedResistance.Newtons(train.Resistance.AsSpan(), v) + (weight * curve) + (weight * grade);
            double a = -against / train.Inertia;
            double dt = v + (a * step) < 0 ? -v / a : step;
            double next = Math.Max(0, v + (a * dt));
            (t, x, v) = (t + dt, x + ((v + next) / 2 * dt), next);
            points.Add(new(t, x, v, 1));
        }

        return v > 0 ? new(double.PositiveInfinity, double.PositiveInfinity, [.. points]) : new(t, x - head, [.. points]);
    }
}
