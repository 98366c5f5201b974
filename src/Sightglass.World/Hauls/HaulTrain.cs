using System.Collections.Immutable;
using Sightglass.Basics.Diagnostics;
using Sightglass.Basics.Language;
using Sightglass.Book.Model;
using Sightglass.Network.Laws.Common;
using Sightglass.Plant.Calculators.Running;
using Sightglass.Plant.Kinds.ThreePhase;
using Sightglass.Plant.Plans;

namespace Sightglass.World.Hauls;

/// <summary>A train of the book as it runs over a route: what its vehicles say of themselves, put together.</summary>
/// <param name="Plan">Of the whole train.</param>
/// <param name="Machine">Of a machine of the class by itself: each has its own fuel.</param>
/// <param name="Vehicles">From the head.</param>
/// <param name="Rail">How the rail is.</param>
public sealed record HaulTrain(Plan Plan, Plan Machine, ImmutableArray<HaulVehicle> Vehicles, RailCondition Rail)
{
    /// <summary>W that the cars take.</summary>
    public required double HeadEnd { get; init; }

    /// <summary>Share of what its source can give that the cars take of the first machine that works.</summary>
    public required double HeadEndShare { get; init; }

    /// <summary>What pulls, of each of its machines.</summary>
    public required Pulling Pulling { get; init; }

    /// <summary>The first machine: from it the brakes are worked.</summary>
    public HaulVehicle Head => Vehicles.First(v => v.Unit == 1);

    public IEnumerable<HaulVehicle> Working => Vehicles.Where(v => v.Works);

    public double Mass => Vehicles.Sum(v => v.Mass);

    /// <summary>N of weight.</summary>
    public double Weight => Mass * Physical.Gravity;

    /// <summary>W at the rail, all out.</summary>
    public double Power => Math.Max(0, (Working.Count() * Pulling.Greatest) - (HeadEnd * Pulling.HeadEndCosts));

    /// <summary>Adds up what the vehicles of a train say; null where it cannot run, with the reasons.</summary>
    public static HaulTrain? Bind(Fleet fleet, HaulRequest request, ICollection<HaulRefusal> refused)
    {
        ArgumentNullException.ThrowIfNull(fleet);
        ArgumentNullException.ThrowIfNull(request);
        ArgumentNullException.ThrowIfNull(refused);
        ClassBook book = fleet.Class!.Book;
        if (request.Train is { } named && !book.Trains.ContainsKey(named))
        {
            refused.Add(new(HaulInput.Train, Say.With($"The book has no train `{named}`; {Nearest.DidYouMean(named, book.Trains.Keys) ?? Has(book.Trains.Keys)}")));
            return null;
        }

        if (request.RoadNumber is { } number && !book.RoadNumbers.ContainsKey(number))
        {
            refused.Add(new(HaulInput.RoadNumber, Say.With($"The book has no road number `{number}`; {Nearest.DidYouMean(number, book.RoadNumbers.Keys) ?? Has(book.RoadNumbers.Keys)}")));
            return null;
        }

        RailCondition? rail = request.Rail is { } how ? request.Route.Rails.FirstOrDefault(r => r.Name == how) : request.Route.Rails[0];
        if (rail is null)
        {
            string[] rails = [.. request.Route.Rails.Select(r => r.Name)];
            refused.Add(new(HaulInput.Rail, Say.With($"The route has no rail `{request.Rail!}`; {Nearest.DidYouMean(request.Rail!, rails) ?? Has(rails)}")));
            return null;
        }

        Plan plan = fleet.For(request.RoadNumber, request.Train)!, machine = fleet.For(request.RoadNumber, null)!;
        return VehiclesOf(plan.Book, request, refused) is { } vehicles ? Whole(plan, machine, vehicles, rail, request, refused) : null;
    }

    private static string Has(IEnumerable<string> names) => Say.With($"it has: {Say.Names(names, "; ")}");

    private static ImmutableArray<HaulVehicle>? VehiclesOf(ClassBook book, HaulRequest request, ICollection<HaulRefusal> refused)
    {
        var vehicles = ImmutableArray.CreateBuilder<HaulVehicle>();
        HashSet<string> silent = [];
        int unit = 0;
        foreach (Vehicle v in book.Vehicles)
        {
            ClassBook of = book.ClassOf(v);
            bool isMachine = v.Class.Length == 0 || TrainVehicle.IsMachineClass(v.Class);
            if (of.Running is not { } running || (isMachine && running.Pulls is null))
            {
                if (silent.Add(isMachine ? "" : v.Class))
                {
                    refused.Add(new(null, isMachine ? Say.It("The book does not say how its machine runs and pulls: it lacks `running` with `pulls`.") : Say.With($"The book does not say how `{v.Class}` runs: it lacks `running` there.")));
                }

                continue;
            }

            unit += isMachine ? 1 : 0;
            vehicles.Add(new(v, running, v.To > v.From ? v.To - v.From : of.Length, isMachine ? unit : 0, isMachine && !request.Dead.Contains(unit)));
        }

        foreach (int dead in request.Dead.Where(d => silent.Count == 0 && (d < 1 || d > unit)))
        {
            refused.Add(new(HaulInput.Dead, Say.Of(unit, $"The train has one machine; there is no machine {dead}.", $"The train has {unit} machines; there is no machine {dead}.")));
        }

        if (refused.Count == 0 && !vehicles.Any(v => v.Works))
        {
            refused.Add(new(HaulInput.Dead, Say.It("No machine is left that pulls.")));
        }

        return refused.Count == 0 ? vehicles.ToImmutable() : null;
    }

    private static HaulTrain? Whole(Plan plan, Plan machine, ImmutableArray<HaulVehicle> vehicles, RailCondition rail, HaulRequest request, ICollection<HaulRefusal> refused)
    {
        Pulling pulling = vehicles.First(v => v.Works).Running.Pulls!;
        double headEnd = request.HeadEnd ?? plan.Book.Items.Values.Where(i => i.Kind.Name == ThreePhaseLoadKind.Name && !i.Vehicle.IsTheMachine).Sum(i => i.Parameters["power"].Number * i.Parameters["share"].Number);
        double most = machine.Book.Items.GetValueOrDefault(pulling.Engine) is { } engine && engine.Parameters.TryGetValue("head-end source", out ParameterValue? named)
            && machine.Book.Items.TryGetValue(named.Text, out Item? source) ? source.Parameters["power"].Number : 0;
        if (headEnd > 0 && request.HeadEnd is not null && most <= 0)
        {
            refused.Add(new(HaulInput.HeadEnd, Say.It("The book names no source of head-end power that the engine turns.")));
            return null;
        }

        if (headEnd < 0 || headEnd > most)
        {
            refused.Add(new(HaulInput.HeadEnd, Say.With($"The cars ask for {headEnd / 1000:0} kW, and the source gives at most {most / 1000:0} kW.")));
            return null;
        }

        return new(plan, machine, vehicles, rail) { HeadEnd = headEnd, HeadEndShare = most > 0 ? headEnd / most : 0, Pulling = pulling };
    }

    /// <summary>The same with what is in the tanks of its machines, kg each.</summary>
    public HaulTrain With(double fuel) => this with { Vehicles = [.. Vehicles.Select(v => v.Unit > 0 ? v with { Mass = v.Running.Mass + fuel } : v)] };

    /// <summary>As the equation of motion takes it, with brakes by their build-up.</summary>
    public RouteTrain Running(bool sands, BuildUp service, double planned)
    {
        ArgumentNullException.ThrowIfNull(service);
        double[] resistance = new double[3];
        foreach (HaulVehicle v in Vehicles)
        {
            double[] own = ResistanceForm.Of(v.Running.Resistance).Sheet(v.Mass, v.Running.Axles, v.Running.Resistance.Front);
            for (int i = 0; i < resistance.Length; i++)
            {
                resistance[i] += own[i];
            }
        }

        RouteTrain train = new()
        {
            Mass = Mass,
            Length = Vehicles.Sum(v => v.Length),
            Resistance = [.. resistance],
            Power = Power,
            DrivenWeight = Working.Sum(v => v.Mass * Physical.Gravity * v.Running.Pulls!.DrivenAxles / v.Running.Axles),
            Most = Working.Sum(v => v.Running.Pulls!.Most),
            Deceleration = 1,
            DeadSeconds = service.DeadSeconds,
            BuildUpSeconds = service.BuildUpSeconds,
            Sands = sands,
        };
        return train with { Deceleration = planned * service.Newtons / (train.Mass * (1 + train.TurningShare)) };
    }

    /// <summary>The route as the equation of motion takes it, with the rail of the day.</summary>
    public ImmutableArray<RouteStretch> StretchesOf(Route route)
    {
        ArgumentNullException.ThrowIfNull(route);
        return [.. route.Stretches.Select(s => new RouteStretch(s.To - s.From, s.Grade, s.Limit, s.CurveDegrees, Rail.Adhesion * s.Holds, Rail.Sanded * s.Holds))];
    }

    /// <summary>N of its dynamic brakes at a speed, of the machines that work; 0 beyond what the book says.</summary>
    public double DynamicNewtons(double speed) => Working.Sum(v => At(v.Running.DynamicBrake, speed));

    private static double At(ImmutableArray<(double Speed, double Force)> curve, double speed)
    {
        (double Speed, double Force) before = (0, 0);
        foreach ((double Speed, double Force) next in curve)
        {
            if (speed <= next.Speed)
            {
                return next.Speed > before.Speed ? before.Force + ((next.Force - before.Force) * (speed - before.Speed) / (next.Speed - before.Speed)) : next.Force;
            }

            before = next;
        }

        return 0;
    }
}
