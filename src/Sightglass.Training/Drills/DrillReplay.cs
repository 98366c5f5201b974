using Sightglass.Basics.Diagnostics;
using Sightglass.Basics.Time;
using Sightglass.Plant.Plans;
using Sightglass.Training.Evaluation;
using Sightglass.World.Records;

namespace Sightglass.Training.Drills;

/// <summary>A drill put where its record says. A live drill, its replay and a run without pages go the same way, and earn the same sheet.</summary>
public static class DrillReplay
{
    /// <summary>Where a drill starts, for the head of its record.</summary>
    public static SessionStart StartOf(BoundDrill drill, ulong seed, ulong caseNumber)
    {
        ArgumentNullException.ThrowIfNull(drill);
        return new(drill.Plan.Book.RoadNumberInUse, drill.Drill.Situation, seed, caseNumber, drill.Drill.Name);
    }

    /// <summary>Puts a world, just made, at the start of a drill.</summary>
    /// <returns>What follows it; null where the situation does not fit, with the reasons in <paramref name="found"/>.</returns>
    public static DrillRun? Begin(World.World world, BoundDrill drill, SessionStart start, DiagnosticList found)
    {
        ArgumentNullException.ThrowIfNull(drill);
        DrillRun run = new(drill);
        return Replay.Begin(world, start, found, run, drill.Situation) ? run : null;
    }

    /// <summary>Runs a record to its end, and evaluates what came of it.</summary>
    /// <param name="drill">That of the record, on its machine.</param>
    /// <param name="record">As read.</param>
    /// <exception cref="ArgumentException">The record is of another drill, or does not fit the plan.</exception>
    public static DrillResult Run(BoundDrill drill, SessionRecord record)
    {
        ArgumentNullException.ThrowIfNull(drill);
        ArgumentNullException.ThrowIfNull(record);
        if (record.Header.Start.Drill != drill.Drill.Name)
        {
            throw new ArgumentException($"The record is of the drill '{record.Header.Start.Drill}', not of '{drill.Drill.Name}'.", nameof(record));
        }

        using LaneBank bank = new(drill.Plan);
        World.World world = new(bank, 0);
        DiagnosticList found = [];
        DrillRun run = Begin(world, drill, record.Header.Start, found) ?? throw new ArgumentException(string.Join('\n', found), nameof(record));
        Replay.Schedule(world, record);
        world.RunTo(new SimTime(record.End));
        DrillOutcome outcome = run.Outcome;
        world.CutHere();
        return new(outcome, Evaluator.Evaluate(drill, outcome), null, [.. world.Journal!], world.Trouble, world.Hash, world.Steps);
    }
}
