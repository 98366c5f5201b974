using System.Collections.Immutable;
using Sightglass.Basics.Diagnostics;
using Sightglass.Basics.Time;
using Sightglass.Book.Model;
using Sightglass.Book.Recordings;
using Sightglass.Plant.Plans;
using Sightglass.World.Situations;

namespace Sightglass.Trials.Recordings;

/// <summary>A recording beside the machine that began with its rows.</summary>
/// <param name="Bound">The recording on its plan.</param>
/// <param name="States">The rows from which states are drawn.</param>
/// <param name="Situation">From which everything else was drawn; null where no situation draws from the recording.</param>
/// <param name="After">How long the machine had to settle.</param>
/// <param name="Compared">The rows that were run.</param>
public sealed record RecordingReport(BoundRecording Bound, StatesDraw States, string? Situation, SimTime After, ImmutableArray<ComparedRow> Compared)
{
    public Recording Recording => Bound.Recording;

    public RecordedTable Table => Recording.Table!;

    /// <summary>Whether every row ran and agrees wherever the book says how near it must be.</summary>
    public bool Agrees => Compared.All(r => r.Trouble is null) && Apart.All(a => a.Further == 0);

    /// <summary>How far each comparison is from the record.</summary>
    public ImmutableArray<ColumnApart> Apart => [.. Bound.Comparisons.Select((c, i) => ColumnApart.Of(c, i, Compared))];

    /// <summary>Starts the machine with rows of a recording and compares; null where it does not fit, with the reasons in <paramref name="found"/>.</summary>
    /// <param name="fleet">The plans of the book.</param>
    /// <param name="recording">Whose file was read.</param>
    /// <param name="situation">That draws from it, and tells the rest; null: everything else is as usual, and every row is a state.</param>
    /// <param name="rows">How many rows are run, evenly spread.</param>
    /// <param name="after">How long the machine has to settle.</param>
    /// <param name="draws">The case by which everything is drawn that the recording does not tell.</param>
    /// <param name="found">Takes what does not fit.</param>
    /// <param name="tell">Is told how many rows are done.</param>
    /// <param name="stop">Ends it after a row.</param>
    public static RecordingReport? Run(Fleet fleet, Recording recording, Situation? situation, int rows, SimTime after, CaseDraws draws, DiagnosticList found, Action<int>? tell = null, CancellationToken stop = default)
    {
        ArgumentNullException.ThrowIfNull(fleet);
        ArgumentNullException.ThrowIfNull(recording);
        ArgumentNullException.ThrowIfNull(draws);
        string? number = situation is null ? null : RoadNumberDraw.Of(fleet.Class!.Book, situation, draws.Seed, draws.Case);
        Situation start = situation ?? new() { Name = recording.Name, Span = recording.Span, Train = recording.Train, States = RecordedRows.All(recording) };
        return fleet.MachineOf(number, recording.Train) is { } plan && BoundRecording.Bind(recording, plan, found) is { } bound && SituationStart.Bind(plan, start, found) is { } begun
            ? new(bound, start.States!, situation?.Name, after, bound.Comparisons.IsEmpty ? [] : RecordingRun.Run(bound, begun, Spread(start.States!.Rows.Length, rows), after, draws, tell, stop))
            : null;
    }

    private static IEnumerable<int> Spread(int rows, int wanted) => rows <= wanted ? Enumerable.Range(0, rows) : wanted == 1 ? [0] : Enumerable.Range(0, wanted).Select(i => (int)((long)i * (rows - 1) / (wanted - 1)));
}
