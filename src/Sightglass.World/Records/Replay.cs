using Sightglass.Basics.Diagnostics;
using Sightglass.Basics.Time;
using Sightglass.Book.Model;
using Sightglass.Plant.Plans;
using Sightglass.World.Situations;

namespace Sightglass.World.Records;

/// <summary>Puts worlds where a record says. A live session, its replay and a run without pages go the same way, bit for bit.</summary>
public static class Replay
{
    /// <summary>Puts a world, just made, at a start.</summary>
    /// <param name="world">Just made.</param>
    /// <param name="start">Where it starts.</param>
    /// <param name="found">Takes what does not fit.</param>
    /// <param name="follows">Who follows it, or null.</param>
    /// <param name="situation">Instead of the book's of that name: as a drill has it.</param>
    /// <returns>False where the situation does not fit the plan; what is wrong is in <paramref name="found"/>.</returns>
    public static bool Begin(World world, SessionStart start, DiagnosticList found, Overseer? follows = null, Situation? situation = null)
    {
        ArgumentNullException.ThrowIfNull(world);
        ArgumentNullException.ThrowIfNull(start);
        world.Journal ??= [];
        if (follows is not null)
        {
            world.Follow(follows);
        }

        if (start.Situation is null)
        {
            return true;
        }

        if ((situation is null && !world.Plan.Book.Situations.TryGetValue(start.Situation, out situation))
            || SituationStart.Bind(world.Plan, situation, found) is not { } bound)
        {
            return false;
        }

        bound.Apply(world, new CaseDraws(start.Seed, start.Case));
        return true;
    }

    /// <summary>Hands a world all actions of a record; they happen when it gets there.</summary>
    public static void Schedule(World world, SessionRecord record)
    {
        ArgumentNullException.ThrowIfNull(record);
        foreach (RecordLine line in record.Lines)
        {
            if (line.Do is { } action)
            {
                world.Do(action, new(line.At));
            }
        }
    }

    /// <summary>Runs a record from start to end without pages and pacing.</summary>
    /// <returns>The hash at its end, made whole by a cut there.</returns>
    /// <exception cref="ArgumentException">The record does not fit the plan.</exception>
    public static ulong Hash(Plan plan, SessionRecord record)
    {
        ArgumentNullException.ThrowIfNull(record);
        using LaneBank bank = new(plan);
        World world = new(bank, 0);
        DiagnosticList found = new();
        if (!Begin(world, record.Header.Start, found))
        {
            throw new ArgumentException(string.Join('\n', found), nameof(record));
        }

        Schedule(world, record);
        world.RunTo(new SimTime(record.End));
        world.CutHere();
        return world.Hash;
    }
}
