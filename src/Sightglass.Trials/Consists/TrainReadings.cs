using System.Collections.Immutable;
using Sightglass.Book.Model;
using Sightglass.Plant.Kinds.ThreePhase;
using Sightglass.Plant.Plans;

namespace Sightglass.Trials.Consists;

/// <summary>What is read of a train that runs, at one moment.</summary>
internal sealed class TrainReadings
{
    private const string LoadKind = "three-phase load";
    private const string SourceKind = "three-phase source";
    private const string BreakerKind = "three-phase breaker";
    private const string CylinderKind = "brake cylinder";
    private const string AxleKind = "axle";

    private readonly Plan _plan;
    private readonly Dictionary<string, double> _values = new(StringComparer.Ordinal);

    private TrainReadings(Plan plan) => _plan = plan;

    /// <summary>Facts that hold.</summary>
    public required IReadOnlySet<string> Facts { get; init; }

    /// <summary>kg of each vehicle from the head as its axles show it on scales; null for one without axles on which anything stands.</summary>
    public required ImmutableArray<double?> Weighed { get; init; }

    public static TrainReadings Of(World.World world, ImmutableArray<CheckedVehicle> vehicles)
    {
        Plan plan = world.Plan;
        return new TrainReadings(plan)
        {
            Facts = plan.Facts.Where(f => world.Value(f.Value) >= 0).Select(f => f.Key).ToHashSet(StringComparer.Ordinal),
            Weighed = [.. vehicles.Select(v => WeightOf(world, v.Vehicle))],
        }.Take(world);
    }

    /// <summary>Cylinders in this moment and in another in which the brakes are set.</summary>
    public TrainBrakes Brakes(TrainReadings set, ImmutableArray<CheckedVehicle> vehicles) =>
        new([.. vehicles.Select(v => new VehicleBrakes(v, [.. Items(CylinderKind).Where(c => c.Vehicle.Index == v.Vehicle.Index).Select(c => new CylinderReading(c, !Holds("applied", c), set.Holds("applied", c), set.Value("retarding force", c)))]))]);

    public TrainPower Power()
    {
        CurrentReading[] jumpers =
        [
            .. Items(JumperKind.Name).Select(j => (Jumper: j, Ends: new[] { j.From, j.To }.Select(e => _plan.Book.Items[e!.Item]).ToArray())).Where(j => j.Ends.All(e => ReceptacleKind.BusOf(_plan.Book, e) is not null))
                .Select(j => new CurrentReading(j.Jumper, Value("current", j.Jumper), j.Ends.Min(e => e.Parameters[ReceptacleKind.Rated].Number))),
        ];
        return new(
            [.. Items(SourceKind).Select(s => new SourceReading(s, Value("output", s), s.Parameters["power"].Number))],
            [.. Items(LoadKind).Select(l => new LoadReading(l, _values.GetValueOrDefault($"voltage of {(l.From ?? l.To)?.Item}"), l.Parameters["rated voltage"].Number, Value("consumption", l), Holds("working", l)))],
            [.. jumpers],
            [.. Items(BreakerKind).Select(b => new CurrentReading(b, Value("current", b), b.Parameters["rating"].Number, Holds("tripped", b)))]);
    }

    private IEnumerable<Item> Items(string kind) => _plan.Book.ItemsInOrder.Where(i => i.Kind.Name == kind);

    private double Value(string quantity, Item item) => _values.GetValueOrDefault($"{quantity} of {item.Name}");

    private bool Holds(string condition, Item item) => _values.TryGetValue($"{condition} of {item.Name}", out double margin) && margin >= 0;

    private TrainReadings Take(World.World world)
    {
        Read(LoadKind, "consumption", "working");
        Read(SourceKind, "output");
        Read(JumperKind.Name, "current");
        Read(BreakerKind, "current", "tripped");
        Read(CylinderKind, "applied", "retarding force");
        foreach (string bus in Items(LoadKind).Select(l => (l.From ?? l.To)?.Item).OfType<string>())
        {
            Keep($"voltage of {bus}");
        }

        return this;

        void Read(string kind, params ReadOnlySpan<string> quantities)
        {
            foreach (string quantity in quantities)
            {
                foreach (Item item in Items(kind))
                {
                    Keep($"{quantity} of {item.Name}");
                }
            }
        }

        void Keep(string name)
        {
            if (_plan.FindSignal(name) is { } signal)
            {
                _values[name] = world.Value(signal);
            }
        }
    }

    private static double? WeightOf(World.World world, Vehicle vehicle)
    {
        Item[] axles = [.. world.Plan.Book.ItemsInOrder.Where(i => i.Kind.Name == AxleKind && i.Vehicle.Index == vehicle.Index)];
        double all = axles.SelectMany(a => new[] { $"right wheel load of {a.Name}", $"left wheel load of {a.Name}" }).Select(world.Plan.FindSignal).Sum(s => s is null ? 0 : world.Value(s));
        double own = axles.Sum(a => a.Parameters["mass"].Number);
        return all > own + 1 ? all : null;
    }
}
