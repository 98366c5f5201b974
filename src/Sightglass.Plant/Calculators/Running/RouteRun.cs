using System.Collections.Immutable;
using Sightglass.Network.Laws.Common;
using Sightglass.Network.Laws.Motion;

namespace Sightglass.Plant.Calculators.Running;

/// <summary>
/// A train over a route as fast as its power, the rail, its brakes and the limits let it: full power up to the limit, then that speed, and brakes in time for each lower limit and for the end.
/// Equation of motion by effort, resistance, grade and brake; each step moves by the mean of its speeds, so that the energies add up. Source: method of Hay, Railroad Engineering (from memory).
/// Dynamic brake is not counted. What comes out is for planning: rules, timetable and the people on the engine decide.
/// </summary>
public sealed class RouteRun
{
    /// <summary>Share of a speed within which it counts as kept.</summary>
    private const double Kept = 1e-9;

    /// <summary>m/s below which a train stands.</summary>
    private const double Stands = 1e-6;

    /// <summary>m/s at which passing the end is a matter of the last step, not of brakes.</summary>
    private const double Slow = 0.5;

    /// <summary>m before the end at which a stand is an arrival, not a stall: a crawl further would tell nothing.</summary>
    private const double Arrival = 5;

    private readonly RouteTrain _train;
    private readonly RouteProfile _route;
    private readonly double _step;
    private readonly List<RoutePoint> _points;
    private double _fuel, _pulled, _resisted, _lifted, _braked;

    /// <summary>Where it brakes for, and since when; null where it does not.</summary>
    private (double At, double Speed, double Since)? _braking;

    /// <summary>Whether its brakes hold it on what lies ahead.</summary>
    private bool _holds = true;

    private RouteRun(RouteTrain train, RouteProfile route, double from, double speed, double step) =>
        (_train, _route, _step, _points) = (train, route, step, [new(0, from, speed, 0)]);

    private RoutePoint Now => _points[^1];

    /// <summary>Runs a route, or a part of it, to a stand.</summary>
    /// <param name="train">What runs.</param>
    /// <param name="stretches">One after the other, at least one.</param>
    /// <param name="speed">m/s at the start.</param>
    /// <param name="step">s; a fifth of a second tells distances to a metre.</param>
    /// <param name="longest">s after which a train that crawls counts as stalled.</param>
    /// <param name="from">m from the start of the route at which its head begins; what lies behind is felt by the cars.</param>
    /// <param name="to">m at which its head is to stand; the end of the route where absent.</param>
    public static RouteResult Of(RouteTrain train, ImmutableArray<RouteStretch> stretches, double speed = 0, double step = 0.2, double longest = 48 * 3600, double from = 0, double? to = null)
    {
        ArgumentNullException.ThrowIfNull(train);
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(step);
        ArgumentOutOfRangeException.ThrowIfZero(stretches.Length, nameof(stretches));
        RouteRun run = new(train, new(stretches, train.Length, to), from, speed, step);
        RouteOutcome? outcome = null;
        while (outcome is null && run.Now.Seconds < longest)
        {
            outcome = run.Step();
        }

        double Motion(RoutePoint p) => train.Inertia * p.Speed * p.Speed / 2;
        return new(outcome ?? RouteOutcome.Stalled, [.. run._points], run._fuel, new(run._pulled, run._resisted, run._lifted, run._braked, Motion(run._points[0]), Motion(run.Now)));
    }

    /// <summary>One step; how it ended, or null.</summary>
    private RouteOutcome? Step()
    {
        (double t, double x, double v) = (Now.Seconds, Now.Metres, Now.Speed);
        (double gradeShare, double curveShare) = _route.ShareAt(x);
        double weight = _train.Mass * Physical.Gravity;
        (double grade, double curve) = (weight * gradeShare, weight * curveShare);
        LookAhead(t, x, v);
        if (!_holds)
        {
            return RouteOutcome.RanAway;
        }

        double limit = _route.LimitAt(x);

        // What air and bearings resist goes with the speed in the middle of the step.
        double guess = Math.Max(0, v + (_step / 2 * (Effort(x, v) - Drag(v) - curve - grade) / _train.Inertia));
        double middle = _braking is null && v < limit ? Math.Min(guess, limit) : v;
        double resists = Drag(middle) + curve;
        (double pull, double brake) = Forces(t, x, v, middle, limit, resists + grade);
        double a = (pull - (brake * _train.Inertia * _train.Deceleration) - resists - grade) / _train.Inertia;
        if (v <= Stands && a <= 0)
        {
            return _route.Length - x < Arrival ? RouteOutcome.Arrived : RouteOutcome.Stalled;
        }

        double dt = v + (a * _step) < 0 ? -v / a : _step;
        double next = Math.Max(0, v + (a * dt));
        double way = (v + next) / 2 * dt;
        Count(pull, brake, resists, grade, way, dt);
        _points.Add(new(t + dt, x + way, next, brake, pull));
        return x + way > _route.Length ? (next > Slow ? RouteOutcome.RanAway : RouteOutcome.Arrived)
            : next > (limit * 1.5) + 5 ? RouteOutcome.RanAway
            : next <= Stands && _route.Length - x - way < Arrival ? RouteOutcome.Arrived
            : null;
    }

    private void Count(double pull, double brake, double resists, double grade, double way, double dt)
    {
        _pulled += pull * way;
        _resisted += resists * way;
        _lifted += grade * way;
        _braked += brake * _train.Inertia * _train.Deceleration * way;
        _fuel += ((pull * way / _train.Efficiency) + (_train.HeadEnd * dt)) * _train.Consumption;
    }

    /// <summary>N that pull and share of the brakes that hold.</summary>
    private (double Pull, double Brake) Forces(double t, double x, double v, double middle, double limit, double against)
    {
        double full = _train.Inertia * _train.Deceleration;
        if (_braking is { } braking)
        {
            double ramp = Ramp(t + (_step / 2) - braking.Since);
            return (0, ramp < 1 ? ramp : Math.Clamp(((_train.Inertia * Needed(x, v, (braking.At, braking.Speed))) - against) / full, 0, 1));
        }

        double effort = Effort(x, middle);
        double wanted = against + (_train.Inertia * (limit - v) / _step);
        return (Math.Clamp(wanted, 0, effort), Math.Clamp(-wanted / full, 0, 1));
    }

    /// <summary>Begins to brake in time for what lies ahead, and releases where that is reached.</summary>
    private void LookAhead(double t, double x, double v)
    {
        if (_braking is { } braking && (v <= braking.Speed * (1 + Kept) || x >= braking.At))
        {
            _braking = null;
        }

        // A step early, so that the step in which it begins is no loss.
        (double At, double Speed, double Way)[] due =
        [
            .. _route.Ahead(x).Where(l => l.Speed < v).Select(l => (l.At, l.Speed, Way: Slowing(x, v, l.Speed, l.At))).Where(l => x + l.Way + (v * _step) >= l.At),
        ];
        if (due.Length == 0)
        {
            return;
        }

        // Where brakes are on already they stay on: only what asks for more takes the place of that for which they are.
        (double at, double speed, _) = due.MaxBy(l => Needed(x, v, (l.At, l.Speed)));
        if (_braking is not { } now)
        {
            _braking = (at, speed, t);
        }
        else if (Needed(x, v, (at, speed)) > Needed(x, v, (now.At, now.Speed)))
        {
            _braking = (at, speed, now.Since);
        }

        _holds = due.All(l => double.IsFinite(l.Way));
    }

    /// <summary>m to slow down for a place, on the steepest fall of where it would; endless where its brakes do not hold there.</summary>
    private double Slowing(double x, double from, double to, double place)
    {
        double level = Slowing(from, to, _train.Deceleration);
        double a = On(Math.Max(x, place - (2 * level)));
        double way = a > 0 ? Slowing(from, to, a) : double.PositiveInfinity;
        return way <= 2 * level ? way : On(x) is > 0 and var all ? Slowing(from, to, all) : double.PositiveInfinity;

        double On(double begin) => _train.Deceleration + (Physical.Gravity / (1 + _train.TurningShare) * _route.SteepestFall(begin, place));
    }

    /// <summary>m to slow down, dead time and build-up included.</summary>
    private double Slowing(double from, double to, double a)
    {
        double build = _train.BuildUpSeconds, after = from - (a * build / 2);
        double way = from * _train.DeadSeconds;
        if (after < to)
        {
            double s = Math.Sqrt(2 * (from - to) * build / a);
            return way + (from * s) - (a * s * s * s / (6 * build));
        }

        return way + (from * build) - (a * build * build / 6) + (((after * after) - (to * to)) / (2 * a));
    }

    /// <summary>m/s² that bring it down to a speed at a place.</summary>
    private static double Needed(double x, double v, (double At, double Speed) to) => ((v * v) - (to.Speed * to.Speed)) / (2 * Math.Max(1e-3, to.At - x));

    private double Ramp(double since) => since < _train.DeadSeconds ? 0 : _train.BuildUpSeconds > 0 ? Math.Min(1, (since - _train.DeadSeconds) / _train.BuildUpSeconds) : 1;

    private double Effort(double x, double v)
    {
        RouteStretch here = _route.At(x);
        return Math.Min(_train.Most, TractiveEffort.Newtons(_train.Power, 1, _train.DrivenWeight, _train.Sands ? Math.Max(here.Adhesion, here.Sanded) : here.Adhesion, v));
    }

    private double Drag(double v) => SpeedResistance.Newtons(_train.Resistance.AsSpan(), v);
}
