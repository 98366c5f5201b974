using System.Collections.Immutable;
using Sightglass.Plant.Calculators.Running;
using Sightglass.World.Hauls;

namespace Sightglass.Cli.Output;

/// <summary>A run over a route, for a program. Ways are from the start of the route; what is not reached is null.</summary>
internal sealed record HaulAnswer(
    string Route, string? Train, string Rail, string Outcome, double TimeS, double WayM, double MassKg, double HeadEndW, ImmutableArray<HaulAnswer.Call> Calls, ImmutableArray<HaulAnswer.Unit> Fuel,
    HaulAnswer.Further? Range, HaulAnswer.Climb Ruling, HaulAnswer.Brake Emergency, HaulAnswer.Brake FullService, ImmutableArray<HaulAnswer.Stop> Stops, ImmutableArray<HaulAnswer.Fall> Falls, HaulAnswer.Work Energy)
{
    /// <summary>Whether it arrives by its own fuel without a machine that is down to its margin.</summary>
    public static bool IsGood(HaulResult run) => run.Outcome == RouteOutcome.Arrived && run.Starved is null && run.Fuel.All(f => f.ReachesAt(run.Request.Margin * f.Start) is null);

    public static HaulAnswer Of(HaulResult run) => new(
        run.Request.Route.Name,
        run.Request.Train,
        run.Train.Rail.Name,
        run.Starved is not null ? "starved" : run.Outcome switch { RouteOutcome.Arrived => "arrived", RouteOutcome.Stalled => "stalled", _ => "not held" },
        run.End.Seconds,
        run.End.Metres,
        run.Train.Mass,
        run.Train.HeadEnd,
        [.. run.Calls.Select(c => new Call(c.Place?.Name, c.Metres, c.Arrives, c.Leaves, c.Speed))],
        [.. run.Fuel.Select(f => Of(run, f))],
        run.Range is { } r ? new(r.Unit, r.Margin, Finite(r.Metres), Finite(r.Standing)) : null,
        new(run.Ruling.Metres, run.Ruling.Share, run.Balance),
        Of(run.Emergency),
        Of(run.Service),
        [.. run.Stops.Select(s => new Stop(s.Metres, s.Speed, Of(s.Emergency), Of(s.EmergencyAtOnce), Of(s.Service)))],
        [.. run.Falls.Select(f => new Fall(f.From, f.To, f.Grade, f.Limit, f.Asks, f.Dynamic))],
        new(run.Energy.Pulled, run.Energy.Resisted, run.Energy.Lifted, run.Energy.Braked, run.Energy.Left));

    private static Unit Of(HaulResult run, UnitFuel fuel) => new(
        fuel.Unit,
        fuel.GivesHeadEnd,
        fuel.Burnt[^1],
        [.. fuel.Compartments.Select(c => new Compartment(c.Item.Name, c.Volumes[0], c.Volumes[^1]))],
        fuel.StoppedAt,
        fuel.StoppedAt is { } stopped ? run.MetresAt(stopped) : null,
        fuel.ReachesAt(run.Request.Margin * fuel.Start) is { } margin ? run.MetresAt(margin) : null);

    private static Brake Of(BuildUp built) => new(built.Newtons, built.DeadSeconds, built.BuildUpSeconds);

    private static Stand Of(RouteStop stop) => new(Finite(stop.Seconds), Finite(stop.Metres));

    private static double? Finite(double value) => double.IsFinite(value) ? value : null;

    internal sealed record Call(string? Place, double AtM, double ArrivesS, double LeavesS, double SpeedMPerS);

    internal sealed record Unit(int Machine, bool GivesHeadEnd, double BurntM3, ImmutableArray<Compartment> Compartments, double? StoppedAtS, double? StoppedAtM, double? MarginAtM);

    internal sealed record Compartment(string Name, double StartM3, double EndM3);

    internal sealed record Further(int Machine, double MarginM3, double? WayM, double? StandingS);

    internal sealed record Climb(double AtM, double Share, double BalanceMPerS);

    internal sealed record Brake(double FullN, double DeadS, double BuildUpS);

    internal sealed record Stop(double AtM, double SpeedMPerS, Stand Emergency, Stand EmergencyAtOnce, Stand FullService);

    /// <summary>Nulls where it is not held.</summary>
    internal sealed record Stand(double? TimeS, double? WayM);

    internal sealed record Fall(double FromM, double ToM, double Grade, double LimitMPerS, double AsksN, double DynamicN);

    internal sealed record Work(double PulledJ, double ResistedJ, double LiftedJ, double BrakedJ, double LeftJ);
}
