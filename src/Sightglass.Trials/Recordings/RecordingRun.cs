using System.Collections.Immutable;
using Sightglass.Basics.Time;
using Sightglass.Plant.Plans;
using Sightglass.World.Situations;

namespace Sightglass.Trials.Recordings;

/// <summary>Starts the machine with rows of a recording, one after the other, and compares what it settles to with what was recorded beside.</summary>
public static class RecordingRun
{
    /// <param name="recording">Bound to the plan of <paramref name="start"/>.</param>
    /// <param name="start">A situation with states from that recording.</param>
    /// <param name="choices">Which of the situation's rows, by their place among them.</param>
    /// <param name="after">How long the machine has to settle.</param>
    /// <param name="draws">The case by which everything is drawn that the recording does not tell.</param>
    /// <param name="tell">Is told how many rows are done.</param>
    /// <param name="stop">Ends it after a row.</param>
    public static ImmutableArray<ComparedRow> Run(BoundRecording recording, SituationStart start, IEnumerable<int> choices, SimTime after, CaseDraws draws, Action<int>? tell = null, CancellationToken stop = default)
    {
        ArgumentNullException.ThrowIfNull(recording);
        ArgumentNullException.ThrowIfNull(start);
        ArgumentNullException.ThrowIfNull(choices);
        ArgumentNullException.ThrowIfNull(draws);
        ImmutableArray<int> rows = start.Situation.States!.Rows;
        var compared = ImmutableArray.CreateBuilder<ComparedRow>();
        foreach (int choice in choices.TakeWhile(_ => !stop.IsCancellationRequested))
        {
            compared.Add(One(recording, start, rows[choice], draws.With(SituationStart.RowOrder, (choice + 0.5) / rows.Length), after));
            tell?.Invoke(compared.Count);
        }

        return compared.ToImmutable();
    }

    private static ComparedRow One(BoundRecording recording, SituationStart start, int row, CaseDraws draws, SimTime after)
    {
        using LaneBank bank = new(start.Plan);
        World.World world = new(bank, 0);
        start.Apply(world, draws);
        ImmutableArray<double> machine = [.. recording.Comparisons.Select(_ => double.NaN)];
        world.OnSample = seen => machine = [.. recording.Comparisons.Select(c => c.Machine(seen))];
        world.SampleAt(after);
        world.RunTo(after);
        return new(row, [.. recording.Comparisons.Select(c => c.Recorded(recording.Recording.Table!, row))], machine, world.Trouble);
    }
}
