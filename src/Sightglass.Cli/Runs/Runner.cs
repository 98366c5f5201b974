using Sightglass.Basics.Time;
using Sightglass.Plant.Plans;
using Sightglass.World.Records;
using Sightglass.World.Runs;

namespace Sightglass.Cli.Runs;

/// <summary>Runs one case from its start to its end.</summary>
internal static class Runner
{
    public static RunResult Run(RunRequest request, IReadOnlyList<Column> columns)
    {
        using LaneBank bank = new(request.Plan);
        World.World world = new(bank, 0) { Journal = [] };
        CardRun? run = request.Choices.IsDefaultOrEmpty ? null : new(request.Choices) { RestAtEnd = request.For is null };
        Recorder recorder = new(columns, request.Every);
        Begin(request, world, run);
        recorder.Attach(world);
        bool over = run is { RestAtEnd: true } && run.Ended != OutcomeKind.Running;
        Go(request, world, over ? world.Now : request.For ?? SimTime.FromSeconds(world.HumanTimes.LongestRun));
        world.CutHere();
        return new(request, recorder, world.Now, world.Steps, world.Hash, run?.Outcome, world.Trouble, world.Journal);
    }

    private static void Begin(RunRequest request, World.World world, CardRun? run)
    {
        if (request.From is { } from)
        {
            world.Restore(from, run);
            return;
        }

        request.Start?.Apply(world, request.Seed, request.Case);
        if (run is not null)
        {
            world.Begin(run);
        }

        if (request.Record is { } record)
        {
            Replay.Schedule(world, record);
        }
    }

    private static void Go(RunRequest request, World.World world, SimTime until)
    {
        if (request.Saving is { } saving)
        {
            saving.Run(request, world, until);
        }
        else
        {
            world.RunTo(until);
        }
    }
}
