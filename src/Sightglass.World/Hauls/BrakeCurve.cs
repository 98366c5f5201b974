using System.Collections.Immutable;
using Sightglass.Basics.Diagnostics;
using Sightglass.Basics.Language;
using Sightglass.Basics.Time;
using Sightglass.Book.Model;
using Sightglass.Network.Laws.Common;
using Sightglass.Plant.Calculators.Running;
using Sightglass.Plant.Kinds.Air;
using Sightglass.Plant.Plans;
using Sightglass.Plant.Signals;
using Sightglass.World.Situations;

namespace Sightglass.World.Hauls;

/// <summary>
/// How the air brakes of a train build up after a handle is moved: run in the living train, from charged and let go, and what the shoes and pads of every vehicle hold back at the rail written down.
/// </summary>
/// <param name="Seconds">Since the handle was moved, rising from 0.</param>
/// <param name="Newtons">By moment, then by vehicle from the head.</param>
/// <param name="Weights">N of each vehicle.</param>
public sealed record BrakeCurve(ImmutableArray<double> Seconds, ImmutableArray<ImmutableArray<double>> Newtons, ImmutableArray<double> Weights)
{
    /// <summary>s for which the brakes are let go before the handle is moved.</summary>
    private const double LetGo = 120;

    /// <summary>s that are written down; the last of them goes on.</summary>
    private const double Long = 60;

    private const double Every = 0.25;

    /// <summary>Share of the full force that may be left when they are let go.</summary>
    private const double Dragging = 0.02;

    /// <summary>N at a moment where the rail holds a share of each vehicle's weight; no wheel holds more.</summary>
    public double At(double seconds, double adhesion)
    {
        double at = Math.Clamp(seconds / Every, 0, Seconds.Length - 1);
        int i = Math.Min((int)at, Seconds.Length - 2);
        double share = at - i, sum = 0;
        for (int v = 0; v < Weights.Length; v++)
        {
            sum += Math.Min(Newtons[i][v] + (share * (Newtons[i + 1][v] - Newtons[i][v])), adhesion * Weights[v]);
        }

        return sum;
    }

    /// <summary>The whole train's, where the rail holds.</summary>
    public BuildUp Of(double adhesion) => BuildUp.Of([.. Seconds.Select(s => (s, At(s, adhesion)))]);

    /// <summary>Runs the living train; null where its brakes cannot be worked, with the reason.</summary>
    /// <param name="train">The train.</param>
    /// <param name="handles">Controls of the machine at the head with the positions that they are put to.</param>
    /// <param name="refused">Takes the reason.</param>
    public static BrakeCurve? Of(HaulTrain train, IReadOnlyDictionary<string, string> handles, ICollection<HaulRefusal> refused)
    {
        ArgumentNullException.ThrowIfNull(train);
        ArgumentNullException.ThrowIfNull(handles);
        ArgumentNullException.ThrowIfNull(refused);
        Plan whole = train.Plan;
        (int Vehicle, Signal Force)[] cylinders =
        [
            .. whole.Book.ItemsInOrder.Where(i => i.Kind.Name == BrakeCylinderKind.Name).Select(i => (Math.Max(0, train.Vehicles.ToList().FindIndex(v => v.Vehicle.Name == i.Vehicle.Name)), whole.FindSignal($"retarding force of {i.Name}")!)),
        ];
        Plan plan = whole.Only(cylinders.Select(c => c.Force));
        if (StartOf(plan, refused) is not { } start)
        {
            return null;
        }

        using LaneBank bank = new(plan);
        World world = new(bank, 0);
        start.Apply(world, 1, 0);
        Work(world, train, train.Head.Running.Brakes!.LetGo, SimTime.Zero);
        SimTime moved = SimTime.FromSeconds(LetGo);
        Work(world, train, handles, moved);
        var seconds = ImmutableArray.CreateBuilder<double>();
        var newtons = ImmutableArray.CreateBuilder<ImmutableArray<double>>();
        for (double s = 0; s <= Long; s += Every)
        {
            world.SampleAt(SimTime.FromSeconds(LetGo + s));
        }

        world.OnSample = w =>
        {
            double[] held = new double[train.Vehicles.Length];
            foreach ((int vehicle, Signal force) in cylinders)
            {
                held[vehicle] += Math.Max(0, w.Value(force));
            }

            seconds.Add((w.Now - moved).Seconds);
            newtons.Add([.. held]);
        };
        world.RunTo(SimTime.FromSeconds(LetGo + Long));
        return Whole(world, new(seconds.ToImmutable(), newtons.ToImmutable(), [.. train.Vehicles.Select(v => v.Mass * Physical.Gravity)]), refused);
    }

    private static BrakeCurve? Whole(World world, BrakeCurve curve, ICollection<HaulRefusal> refused)
    {
        string? wrong = world.Trouble is { } trouble ? Say.With($"The air of the train could not be run: {trouble}")
            : !(curve.Newtons[^1].Sum() > 0) ? Say.It("No brake of the train is set by the positions that the book gives under `brakes`.")
            : curve.Newtons[0].Sum() > Dragging * curve.Newtons[^1].Sum() ? Say.It("The brakes of the train are not let go by the positions that the book gives under `let go`.")
            : null;
        if (wrong is not null)
        {
            refused.Add(new(null, wrong));
        }

        return wrong is null ? curve : null;
    }

    /// <summary>The train charged and ready as the book says it; as it is built where it says nothing.</summary>
    private static SituationStart? StartOf(Plan plan, ICollection<HaulRefusal> refused)
    {
        ClassBook book = plan.Book;
        string? name = book.TrainInUse is { } train ? book.Trains[train].InService : null;
        Situation situation = name is null ? new() { Name = "as built", Span = default, Train = book.TrainInUse } : book.Situations[name];
        if (situation.Train != book.TrainInUse)
        {
            refused.Add(new(null, Say.With($"`{name!}` is not a situation of `{book.TrainInUse!}`: let the train name one of its own under `in service`.")));
            return null;
        }

        DiagnosticList found = [];
        SituationStart? start = SituationStart.Bind(plan, situation with { People = [] }, found);
        foreach (Diagnostic d in found.Where(_ => start is null))
        {
            refused.Add(new(null, d.ToString()));
        }

        return start;
    }

    private static void Work(World world, HaulTrain train, IReadOnlyDictionary<string, string> handles, SimTime at)
    {
        foreach ((string handle, string position) in handles.OrderBy(h => h.Key, StringComparer.Ordinal))
        {
            world.Do(new WorldAction.Operate(-1, train.Head.Vehicle.NameOf(handle), position), at);
        }
    }
}
