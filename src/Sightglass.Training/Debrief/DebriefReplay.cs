using Sightglass.Basics.Time;
using Sightglass.Training.Drills;
using Sightglass.World.Records;

namespace Sightglass.Training.Debrief;

/// <summary>Runs a record again to look at it.</summary>
public static class DebriefReplay
{
    private const int Even = DebriefFilm.MostMoments / 2;

    /// <summary>Runs a record to its end once, keeping moments evenly, at each act and wherever something comes about.</summary>
    /// <param name="drill">That of the record, on its machine.</param>
    /// <param name="record">As read.</param>
    /// <param name="cancel">Ends it.</param>
    /// <exception cref="ArgumentException">The record is of another drill, or does not fit the plan.</exception>
    /// <exception cref="OperationCanceledException">It was ended.</exception>
    public static DebriefFilm Run(BoundDrill drill, SessionRecord record, CancellationToken cancel = default)
    {
        ArgumentNullException.ThrowIfNull(drill);
        ArgumentNullException.ThrowIfNull(record);
        using DebriefStage stage = new(drill, record.Header.Start);
        Replay.Schedule(stage.World, record);
        stage.World.SampleAt(SimTime.Zero);
        stage.Run(new(record.End), Even, DebriefFilm.MostMoments - Even - 2, cancel);
        return stage.End();
    }

    /// <summary>One moment of a record exactly: it is run again up to there.</summary>
    /// <inheritdoc cref="Run" path="/exception"/>
    public static DebriefMoment At(BoundDrill drill, SessionRecord record, SimTime at, CancellationToken cancel = default)
    {
        ArgumentNullException.ThrowIfNull(drill);
        ArgumentNullException.ThrowIfNull(record);
        using DebriefStage stage = new(drill, record.Header.Start);
        Replay.Schedule(stage.World, record);
        SimTime wanted = new(Math.Clamp(at.Ticks, 0, record.End));
        // Where everybody stood last is known by those moments only that were kept on the way.
        stage.Run(wanted, 100, DebriefFilm.MostMoments, cancel);
        return stage.Look();
    }
}
