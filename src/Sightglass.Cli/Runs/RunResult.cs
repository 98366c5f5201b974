using Sightglass.Basics.Time;
using Sightglass.World.Journal;
using Sightglass.World.Runs;

namespace Sightglass.Cli.Runs;

/// <summary>What came of a run.</summary>
internal sealed record RunResult(RunRequest Request, Recorder Recorder, SimTime End, long Steps, ulong Hash, Outcome? Outcome, string? Trouble, IReadOnlyList<JournalEntry> Journal)
{
    /// <summary>Whether the numbers went on and the card did not fail.</summary>
    public bool IsGood => Trouble is null && Outcome?.Kind is not (OutcomeKind.Failed or OutcomeKind.Undecided);
}
