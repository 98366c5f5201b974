using System.Collections.Immutable;
using Sightglass.Basics.Language;
using Sightglass.Book.Model;
using Sightglass.Plant.Calculators.Running;
using Sightglass.World.Hauls;

namespace Sightglass.Paper.Papers;

/// <summary>A run over a route in sentences and tables, in the language that is spoken: what comes out first, then where it comes from, what it leaves out, and who decides.</summary>
/// <param name="run">What was worked out.</param>
public sealed class HaulTold(HaulResult run)
{
    private readonly HaulUnits _units = HaulUnits.Of(run.Train.Plan.Book);

    private Route Route => run.Request.Route;

    /// <summary>What ran, how.</summary>
    public string Asked
    {
        get
        {
            List<string> parts =
            [
                run.Request.Train is { } train ? Say.Book(train) : Say.It("the machine alone"),
                Say.With($"rail: {run.Train.Rail.Name}"),
                run.Request.Sands ? Say.It("with sand") : Say.It("without sand"),
                run.Train.HeadEnd > 0 ? Say.With($"{HaulUnits.Power(run.Train.HeadEnd)} for the cars") : Say.It("nothing for the cars"),
                .. run.Train.Vehicles.Where(v => v.IsDead).Select(v => Say.With($"machine {v.Unit} dead")),
                Say.With($"{HaulUnits.Mass(run.Train.Mass)} in all"),
            ];
            return string.Join(", ", parts);
        }
    }

    /// <summary>What comes out, first thing.</summary>
    public ImmutableArray<string> Verdict
    {
        get
        {
            List<string> said = [];
            if (run.Starved is { } starved)
            {
                double at = run.MetresAt(starved.StoppedAt!.Value);
                int moment = Moment(starved, starved.StoppedAt.Value);
                said.Add(Say.With($"The engine of machine {starved.Unit} stops for want of fuel at milepost {Post(at)}, after {HaulUnits.Clock(starved.StoppedAt.Value)}, with {_units.Fuel(starved.Total(moment))} still in its compartments. What is told of the run beyond that place does not hold."));
            }

            said.Add(run.Outcome switch
            {
                RouteOutcome.Arrived when run.Starved is not null => Say.With($"With fuel it would arrive at {EndName} after {HaulUnits.Clock(run.End.Seconds)}."),
                RouteOutcome.Arrived => Say.With($"It arrives at {EndName} after {HaulUnits.Clock(run.End.Seconds)}."),
                RouteOutcome.Stalled => Say.With($"It comes to a stand at milepost {Post(run.End.Metres)} after {HaulUnits.Clock(run.End.Seconds)}: what pulls is less than what resists."),
                _ => Say.With($"It is not held at milepost {Post(run.End.Metres)}: its brakes, by their planned share, do not keep it to the limit there."),
            });
            foreach (UnitFuel unit in run.Fuel.Where(_ => run.Starved is null))
            {
                double margin = run.Request.Margin * unit.Start;
                said.Add(unit.ReachesAt(margin) is { } at
                    ? Say.With($"Machine {unit.Unit} is down to its margin of {_units.Fuel(margin)} at milepost {Post(run.MetresAt(at))}.")
                    : Say.With($"Machine {unit.Unit} burns {_units.Fuel(unit.Burnt[^1])} and has {_units.Fuel(unit.End)} left."));
            }

            if (run.Range is { Metres: > 0 } range)
            {
                said.Add(Say.With($"At this rate it gets {_units.Along(range.Metres)} further before machine {range.Unit} is down to its margin of {_units.Fuel(range.Margin)}; or it could stand for {HaulUnits.Clock(range.Standing)} with the engine at idle."));
            }

            return [.. said];
        }
    }

    /// <summary>The parts below it.</summary>
    public IEnumerable<HaulPart> Parts()
    {
        yield return Calls();
        foreach (UnitFuel unit in run.Fuel)
        {
            yield return Fuel(unit);
        }

        yield return Grade();
        yield return Brakes();
        if (!run.Falls.IsEmpty)
        {
            yield return Falls();
        }

        yield return new(Say.It("What it leaves out"),
        [
            Say.It("Wind, the way of slack, waiting for signals and meets. Real resistance scatters by a fifth and more. A person at the handle is slower than the limit lets them be."),
            Say.It("Friction of shoes and pads is as the book gives it, the same at every speed; wet or hot they hold less. A wheel that the rail does not hold slides, here it holds what the rail does; sand is not counted for stopping."),
            Say.It("Where power lies between two notches, the handle goes to and fro between them. Machines that work all pull alike; fuel of each is by itself."),
        ]);
    }

    /// <summary>Where it comes from.</summary>
    public static string Source => Say.It("Equation of motion after Hay, Railroad Engineering (from memory); resistance by the forms of Davis 1926 or their modified one; grade and curve by the rules of the trade. Brake cylinders by the living air of the train, fuel by the living fuel system.");

    public static string Caution => Say.It("Work this out to understand, never to run by. A train that does not stop where it should kills people. Speed, braking, tonnage and fuel are decided by the timetable, local rules, the makers' manuals and qualified people.");

    private string EndName => Route.Places is [.., { } last] && run.Calls is [.., { Place: not null }] ? Say.Book(last.Name) : Say.With($"milepost {Post(Route.Length)}");

    /// <summary>A place of the run by its milepost.</summary>
    private string Post(double metres) => _units.Along(Route.From + metres);

    private static int Moment(UnitFuel unit, double seconds) => Math.Max(0, unit.Seconds.ToList().FindIndex(s => s >= seconds));

    private HaulPart Calls() => new(
        Say.It("On the way"),
        [Say.It("place"), Say.It("milepost"), Say.It("arrives"), Say.It("leaves"), Say.It("speed")],
        [
            .. run.Calls.Select(c => ImmutableArray.Create(
                c.Place is { } place ? Say.Book(place.Name) : Say.It("end of the route"), Post(c.Metres), HaulUnits.Clock(c.Arrives), c.Speed > 0 || c.Leaves <= c.Arrives ? "–" : HaulUnits.Clock(c.Leaves), c.Speed > 0 ? _units.At(c.Speed) : "–")),
        ],
        []);

    private HaulPart Fuel(UnitFuel unit) => new(
        Say.With($"Fuel of machine {unit.Unit}"),
        [Say.It("compartment"), Say.It("start"), Say.It("end")],
        [
            .. unit.Compartments.Select(c => ImmutableArray.Create(Say.Book(c.Item.Name), _units.Fuel(c.Volumes[0]), _units.Fuel(c.Volumes[^1]))),
            [Say.It("together"), _units.Fuel(unit.Start), _units.Fuel(unit.End)],
        ],
        [unit.GivesHeadEnd ? Say.It("Its engine turns the source for the cars.") : Say.It("Its engine pulls only.")]);

    private HaulPart Grade()
    {
        double force = Math.Min(run.Running.Most, (run.Request.Sands ? run.Ruling.Sanded : run.Ruling.Adhesion) * run.Running.DrivenWeight);
        return new(Say.It("What decides the climb"), run.Ruling.Share <= 0
            ? [Say.It("Nothing rises on this route.")]
            :
            [
                Say.With($"The ruling grade lies at milepost {Post(run.Ruling.Metres)}: {HaulUnits.Share(run.Ruling.Share)} under the whole train, curves included. It asks for {HaulUnits.Force(run.Ruling.Share * run.Train.Weight)}; the rail and the motors give at most {HaulUnits.Force(force)} there."),
                run.Balance > 0 ? Say.With($"All out it keeps {_units.At(run.Balance)} on it for ever.") : Say.It("It does not move on it."),
            ]);
    }

    private HaulPart Brakes() => new(
        Say.It("Where it stops"),
        [Say.It("from"), Say.It("speed"), Say.It("brake"), Say.It("stands after"), Say.It("way"), Say.It("at milepost")],
        [.. run.Stops.SelectMany(s => new[] { Row(s, Say.It("emergency"), s.Emergency), Row(s, Say.It("full service"), s.Service) })],
        [
            Built(Say.It("Emergency"), run.Emergency),
            Built(Say.It("Full service"), run.Service),
            .. run.Stops.Where(s => double.IsFinite(s.Emergency.Metres) && double.IsFinite(s.EmergencyAtOnce.Metres))
                .Select(s => Say.With($"At milepost {Post(s.Metres)} the emergency's building up costs {_units.Near(s.Emergency.Metres - s.EmergencyAtOnce.Metres)}.")),
            Say.It("By the living air of this train, charged, from the moment the handle is moved. The dynamic brake is never counted. Whoever has to see, decide and reach needs more."),
        ]);

    private ImmutableArray<string> Row(HaulStop stop, string brake, RouteStop to) =>
        [Post(stop.Metres), _units.At(stop.Speed), brake, .. double.IsFinite(to.Metres) ? new[] { HaulUnits.Moment(to.Seconds), _units.Near(to.Metres), Post(stop.Metres + to.Metres) } : [Say.It("never"), "–", "–"]];

    private static string Built(string brake, BuildUp built) =>
        Say.With($"{brake}: {HaulUnits.Force(built.Newtons)} at the rail when full; nothing for {HaulUnits.Moment(built.DeadSeconds)}, then as if it built up evenly over {HaulUnits.Moment(built.BuildUpSeconds)}.");

    private HaulPart Falls() => new(
        Say.It("Downhill"),
        [Say.It("from"), Say.It("to"), Say.It("grade"), Say.It("limit"), Say.It("asks for"), Say.It("dynamic brake gives")],
        [.. run.Falls.Select(f => ImmutableArray.Create(Post(f.From), Post(f.To), HaulUnits.Share(f.Grade), _units.At(f.Limit), HaulUnits.Force(f.Asks), HaulUnits.Force(f.Dynamic)))],
        [run.Falls.All(f => f.IsHeldByDynamic)
            ? Say.It("The dynamic brake could hold it on each of them, while it works. No stop counts on it: it fades, it fails, and the air brake must be able to hold alone.")
            : Say.It("The dynamic brake alone does not hold it on each of them. No stop counts on it: it fades, it fails, and the air brake must be able to hold alone.")]);
}
