using System.Collections.Immutable;
using Sightglass.Basics.Diagnostics;
using Sightglass.Basics.Time;
using Sightglass.Book.Consists;
using Sightglass.Book.Model;
using Sightglass.Plant.Plans;
using Sightglass.Plant.Signals;
using Sightglass.Trials.Causes;
using Sightglass.World.Situations;

namespace Sightglass.Trials.Consists;

/// <summary>
/// Checks a train before anybody couples it: it is put together from its classes, set up as it would leave, charged, and run. What is told of its power, its brakes and its commands was seen at the models.
/// </summary>
public static class TrainCheck
{
    /// <summary>s in which pressures settle before anything is done.</summary>
    private const double Settles = 60;

    private const ulong Seed = 1;

    /// <param name="book">Of the class.</param>
    /// <param name="consist">Of its classes, read against it.</param>
    /// <param name="stop">Gives up.</param>
    public static TrainCheckResult Of(ClassBook book, Consist consist, CancellationToken stop = default)
    {
        ArgumentNullException.ThrowIfNull(book);
        ArgumentNullException.ThrowIfNull(consist);
        ConsistVehicle own = consist.Vehicles.First(v => v.Listed.IsThisMachine);
        ClassBook machine = book.RoadNumbers.ContainsKey(own.Number) ? book.For(own.Number) : book;
        ClassBook coupled = machine.Coupled(consist.AsTrain(), []);
        ImmutableArray<CheckedVehicle> vehicles = [.. coupled.Vehicles.Select((v, i) => new CheckedVehicle(v, consist.Vehicles[i], machine.Cars.GetValueOrDefault(v.Class, machine)))];
        ImmutableArray<TrainJoint> joints = TrainJoints.Of(coupled, vehicles);
        int lead = Math.Max(0, Array.FindIndex([.. vehicles], v => v.IsLive));
        TrainCheckResult result = new(coupled, consist, vehicles, joints, CouplingOrder.Of(coupled, joints)) { Lead = lead };
        DiagnosticList wrong = [];
        if (PlanCompiler.Compile(coupled, wrong) is { } plan)
        {
            result = Run(plan, result, stop);
        }

        return result with { Findings = TrainFindings.Of(result, [.. wrong.Select(d => d.Message)]) };
    }

    private static TrainCheckResult Run(Plan plan, TrainCheckResult result, CancellationToken stop)
    {
        TrainSetting setting = new(plan, result.Vehicles, result.Joints, result.Lead);
        Situation situation = setting.Situation();
        SituationStart start = SituationStart.Bind(plan, situation, []) ?? throw new InvalidOperationException($"The train {situation.Name} does not fit its own plan.");
        MakingUp? made = plan.Book.MakingUp;
        ImmutableArray<Setting> deeds = [.. new[] { made?.Brakes }.OfType<Setting>(), .. made?.Commands.Select(c => c.Set) ?? []];
        SimTime acts = SimTime.FromSeconds(Settles), looks = acts + SimTime.FromSeconds(made?.BrakesWithin ?? 1);
        TrainReadings[] read = new TrainReadings[deeds.Length + 1];
        using LaneRunner runner = new(plan);
        string? trouble = null;
        runner.Run(read.Length, looks, Begin, (world, i) => read[i] = TrainReadings.Of(world, result.Vehicles), (world, _) => trouble ??= world.Trouble, stop);
        if (read[0] is not { } still)
        {
            return result with { Trouble = trouble ?? "" };
        }

        ImmutableArray<CheckedVehicle> vehicles = [.. result.Vehicles.Select((v, i) => v with { Mass = v.Listed.Mass ?? v.Class.Hauling?.Mass ?? still.Weighed[i] })];
        TrainBrakes? brakes = made?.Brakes is not null && read[1] is { } set ? still.Brakes(set, vehicles) : null;
        ImmutableArray<CommandAnswers> commands = made is null ? [] : [.. made.Commands.Select((c, i) => Answers(c, read[^(made.Commands.Length - i)]))];
        TrainPower power = still.Power();
        bool allWeighed = vehicles.All(v => v.Mass is not null);
        return result with
        {
            Vehicles = vehicles,
            Power = power,
            Brakes = brakes,
            Commands = commands,
            Pull = allWeighed ? TrainPulling.Of(result.Consist, vehicles, commands, power, brakes?.Newtons ?? 0) : null,
        };

        void Begin(World.World world, int i)
        {
            start.Apply(world, Seed, 0);
            if (i > 0)
            {
                world.Do(new World.WorldAction.Operate(-1, result.Vehicles[result.Lead].Vehicle.NameOf(deeds[i - 1].Item), deeds[i - 1].Position), acts);
            }
        }

        CommandAnswers Answers(TrainCommand command, TrainReadings? done)
        {
            CheckedVehicle lead = result.Vehicles[result.Lead];
            bool stands = setting.PositionOf(lead.Vehicle.NameOf(command.Set.Item)) == command.Set.Position;
            return new(command, [.. result.Vehicles.Select((v, i) => (Vehicle: v, i)).Where(v => v.Vehicle.IsMachine).Select(v => (v.i, Is(v.Vehicle)))]);

            bool Is(CheckedVehicle unit)
            {
                string fact = unit.Listed.Listed.IsTurned != lead.Listed.Listed.IsTurned ? command.AnswersTurned ?? command.Answers : command.Answers;
                string name = unit.Vehicle.NameOf(fact);
                return done is not null && done.Facts.Contains(name) && (stands || !still.Facts.Contains(name));
            }
        }
    }
}
