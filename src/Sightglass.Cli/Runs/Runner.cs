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
        request.Start?.Apply(world, request.Seed, request.Case);
        Recorder recorder = new(columns, request.Every);
        recorder.Attach(world);
        CardRun? run = null;
        if (!request.Choices.IsDefaultOrEmpty)
        {
            run = new(request.Choices) { RestAtEnd = request.For is null };
            world.Begin(run);
        }

        if (request.Record is { } record)
        {
            Replay.Schedule(world, record);
        }

        world.RunTo(request.For ?? SimTime.FromSeconds(world.HumanTimes.LongestRun));
        world.CutHere();
        return new(request, recorder, world.Now, world.Steps, world.Hash, run?.Outcome, world.Trouble, world.Journal);
    }
}
