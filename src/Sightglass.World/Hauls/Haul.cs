using System.Collections.Immutable;
using Sightglass.Basics.Language;
using Sightglass.Book.Model;
using Sightglass.Network.Laws.Motion;
using Sightglass.Plant.Calculators.Running;
using Sightglass.Plant.Plans;

namespace Sightglass.World.Hauls;

/// <summary>
/// Runs a train of the book over a route of the book: time by the equation of motion, stops by the living air of the train, fuel by the living fuel system of each machine that works.
/// For planning and teaching: rules, timetable and the people on the engine decide.
/// </summary>
public static class Haul
{
    private const double Step = 0.2;

    /// <summary>m before a place at which a train that stands there has come to it.</summary>
    private const double Near = 10;

    /// <returns>Null where it cannot be worked out; every reason is in <paramref name="refused"/>.</returns>
    public static HaulResult? Of(Fleet fleet, HaulRequest request, ICollection<HaulRefusal> refused)
    {
        ArgumentNullException.ThrowIfNull(refused);
        if (HaulTrain.Bind(fleet, request, refused) is not { } bound || FuelRun.Bind(bound, request, refused) is not { } fuel || fuel.Volume(refused) is not { } volume)
        {
            return null;
        }

        if (bound.Head.Running.Brakes is not { } handling)
        {
            refused.Add(new(null, Say.It("The book does not say how the air brakes are handled: `running` of the machine lacks `brakes`.")));
            return null;
        }

        HaulTrain train = bound.With(volume * fuel.Density);
        if (BrakeCurve.Of(train, handling.Service, refused) is not { } service || BrakeCurve.Of(train, handling.Emergency, refused) is not { } emergency)
        {
            return null;
        }

        ImmutableArray<RouteStretch> stretches = train.StretchesOf(request.Route);
        double least = stretches.Min(s => s.Adhesion);
        RouteTrain running = train.Running(request.Sands, service.Of(least), handling.Planned);
        RulingGrade ruling = RulingGrade.Of(stretches, running.Length);
        (RouteOutcome outcome, ImmutableArray<RoutePoint> points, RouteEnergy energy, ImmutableArray<HaulCall> calls) = Run(request.Route, running, stretches);
        HaulResult run = new()
        {
            Request = request,
            Train = train,
            Running = running,
            Stretches = stretches,
            Outcome = outcome,
            Points = points,
            Calls = calls,
            Energy = energy,
            Fuel = [],
            Ruling = ruling,
            Balance = BalanceSpeed.MetresPerSecond(running.Power, running.Resistance.AsSpan(), ruling.Share * train.Weight, Math.Min(running.Most, (request.Sands ? ruling.Sanded : ruling.Adhesion) * running.DrivenWeight)),
            Service = service.Of(least),
            Emergency = emergency.Of(least),
            Stops = [],
            Falls = [.. Falls(train, running, stretches)],
            Range = null,
        };
        run = run with { Stops = [.. request.StopsAt.Select(at => Stop(run, at, emergency, service, refused)).OfType<HaulStop>()] };
        if (refused.Count > 0)
        {
            return null;
        }

        run = run with { Fuel = Burn(run, fuel) };
        return run with { Range = RangeOf(run, fuel) };
    }

    private static (RouteOutcome Outcome, ImmutableArray<RoutePoint> Points, RouteEnergy Energy, ImmutableArray<HaulCall> Calls) Run(Route route, RouteTrain train, ImmutableArray<RouteStretch> stretches)
    {
        List<RoutePoint> points = [new(0, 0, 0, 0)];
        List<(RoutePlace? Place, double At, double Arrives, double Leaves)> stands = [];
        RouteEnergy energy = default;
        RouteOutcome outcome = RouteOutcome.Arrived;
        foreach ((RoutePlace? place, double at) in StandsOf(route))
        {
            RoutePoint from = points[^1];
            RouteResult leg = RouteRun.Of(train, stretches, step: Step, from: from.Metres, to: at);
            points.AddRange(leg.Points.Skip(1).Select(p => p with { Seconds = p.Seconds + from.Seconds }));
            energy = new(
                energy.Pulled + leg.Energy.Pulled, energy.Resisted + leg.Energy.Resisted, energy.Lifted + leg.Energy.Lifted, energy.Braked + leg.Energy.Braked, energy.Before + leg.Energy.Before, energy.Left + leg.Energy.Left);
            outcome = leg.Outcome;
            if (outcome != RouteOutcome.Arrived)
            {
                break;
            }

            RoutePoint here = points[^1];
            double leaves = here.Seconds + (at < route.Length ? place?.Stops ?? 0 : 0);
            stands.Add((place, at, here.Seconds, leaves));
            points.Add(here with { Seconds = leaves, Speed = 0, Pull = 0 });
        }

        IEnumerable<HaulCall> passed = route.Places.Where(p => p.Stops is null && p.At < route.To).Select(p => (Place: p, Point: points.FirstOrDefault(q => q.Metres >= p.At - route.From), Reached: points[^1].Metres >= p.At - route.From))
            .Where(p => p.Reached).Select(p => new HaulCall(p.Place, p.Place.At - route.From, p.Point.Seconds, p.Point.Seconds, p.Point.Speed));
        return (outcome, [.. points], energy, [.. stands.Select(s => new HaulCall(s.Place, s.At, s.Arrives, s.Leaves, 0)).Concat(passed).OrderBy(c => c.Metres)]);
    }

    /// <summary>Where it is to stand, the end last.</summary>
    private static IEnumerable<(RoutePlace? Place, double At)> StandsOf(Route route)
    {
        foreach (RoutePlace place in route.Places.Where(p => p.Stops is not null && p.At - route.From > Near && p.At < route.To - Near))
        {
            yield return (place, place.At - route.From);
        }

        yield return (route.Places.FirstOrDefault(p => p.At >= route.To - Near), route.Length);
    }

    private static IEnumerable<HaulFall> Falls(HaulTrain train, RouteTrain running, ImmutableArray<RouteStretch> stretches)
    {
        double from = 0;
        foreach (RouteStretch s in stretches)
        {
            double asks = -(train.Weight * (TrackResistance.GradeShare(s.Grade) + TrackResistance.GradeOfCurve(s.CurveDegrees))) - SpeedResistance.Newtons(running.Resistance.AsSpan(), s.Limit);
            if (s.Grade < 0 && asks > 0)
            {
                yield return new(from, from + s.Length, s.Grade, s.Limit, asks, train.DynamicNewtons(s.Limit));
            }

            from += s.Length;
        }
    }

    private static HaulStop? Stop(HaulResult run, double milepost, BrakeCurve emergency, BrakeCurve service, ICollection<HaulRefusal> refused)
    {
        Route route = run.Request.Route;
        double at = milepost - route.From;
        if (at < 0 || at > route.Length)
        {
            refused.Add(new(HaulInput.StopsAt, Say.It("The place where it is to be stopped does not lie on the route.")));
            return null;
        }

        if (run.Passing(at) is not { } point)
        {
            refused.Add(new(HaulInput.StopsAt, Say.It("The train does not get to the place where it is to be stopped.")));
            return null;
        }

        double full = emergency.Seconds[^1];
        return new(
            at, point.Speed, Of((t, x) => emergency.At(t, AdhesionAt(x))), Of((_, x) => emergency.At(full, AdhesionAt(x))), Of((t, x) => service.At(t, AdhesionAt(x))));

        RouteStop Of(Func<double, double, double> newtons) => RouteStop.Of(run.Running, run.Stretches, at, point.Speed, newtons);

        double AdhesionAt(double x)
        {
            double end = 0;
            foreach (RouteStretch s in run.Stretches)
            {
                end += s.Length;
                if (x < end)
                {
                    return s.Adhesion;
                }
            }

            return run.Stretches[^1].Adhesion;
        }
    }

    private static ImmutableArray<UnitFuel> Burn(HaulResult run, FuelRun fuel)
    {
        HaulTrain train = run.Train;
        int machines = train.Working.Count();
        NotchPlan notches = NotchPlan.Of(run.Points, train.Pulling, machines, run.Running.Power / (machines * train.Pulling.Greatest));
        double[] ends = new double[run.Stretches.Length];
        for (int i = 0; i < ends.Length; i++)
        {
            ends[i] = run.Stretches[i].Length + (i > 0 ? ends[i - 1] : 0);
        }

        double Grade(double seconds)
        {
            int i = Array.FindIndex(ends, e => run.MetresAt(seconds) < e);
            return run.Stretches[i < 0 ? ^1 : i].Grade;
        }

        // Only the first of them turns the source for the cars: two sources are not put on one train.
        var units = ImmutableArray.CreateBuilder<UnitFuel>();
        Dictionary<bool, UnitFuel> others = [];
        foreach (HaulVehicle v in train.Working)
        {
            bool first = units.Count == 0;
            UnitFuel own = !first && others.TryGetValue(v.Vehicle.IsTurned, out UnitFuel? alike) ? alike with { Unit = v.Unit }
                : fuel.Run(v.Unit, first ? train.HeadEndShare : 0, notches, s => (v.Vehicle.IsTurned ? -1 : 1) * Grade(s), run.End.Seconds, out _);
            if (!first)
            {
                others[v.Vehicle.IsTurned] = own;
            }

            units.Add(own);
        }

        return units.ToImmutable();
    }

    private static HaulRange? RangeOf(HaulResult run, FuelRun fuel)
    {
        if (run.Outcome != RouteOutcome.Arrived || run.Starved is not null)
        {
            return null;
        }

        return run.Fuel.Select(Of).MinBy(r => r.Metres);

        HaulRange Of(UnitFuel unit)
        {
            double margin = run.Request.Margin * unit.Start, left = Math.Max(0, unit.End - margin), burnt = unit.Start - unit.End;
            double standing = fuel.Burns(run.Train.Pulling.Notches[0], unit.GivesHeadEnd ? run.Train.HeadEndShare : 0);
            return new(unit.Unit, margin, burnt > 0 ? left * run.End.Metres / burnt : double.PositiveInfinity, standing > 0 ? left / standing : double.PositiveInfinity);
        }
    }
}
