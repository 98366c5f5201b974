using System.Collections.Immutable;
using Sightglass.Basics.Time;
using Sightglass.Book.Model;
using Sightglass.Trials.Recordings;

namespace Sightglass.Cli.Output;

/// <summary>A recording beside the machine that began with its rows.</summary>
/// <param name="Bound">The recording on its plan.</param>
/// <param name="States">The rows from which states are drawn.</param>
/// <param name="Situation">From which everything else was drawn; null where no situation draws from the recording.</param>
/// <param name="After">How long the machine had to settle.</param>
/// <param name="Compared">The rows that were run.</param>
internal sealed record RecordingReport(BoundRecording Bound, StatesDraw States, string? Situation, SimTime After, ImmutableArray<ComparedRow> Compared)
{
    public Recording Recording => Bound.Recording;

    public RecordedTable Table => Recording.Table!;

    /// <summary>Whether every row ran and agrees wherever the book says how near it must be.</summary>
    public bool Agrees => Compared.All(r => r.Trouble is null && Bound.Comparisons.Select((c, i) => c.Agrees(r.Recorded[i], r.Machine[i])).All(a => a));
}
