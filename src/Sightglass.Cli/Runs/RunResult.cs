using Sightglass.Basics.Time;
using Sightglass.World.Journal;
using Sightglass.World.Runs;

namespace Sightglass.Cli.Runs;

/// <summary>What came of a run.</summary>
internal sealed record RunResult(RunRequest Request, Recorder Recorder, SimTime End, long Steps, ulong Hash, Outcome? Outcome, string? Trouble, IReadOnlyList<JournalEntry> Journal)
{
    /// <summary>The hash with which the session was closed that was done again; null where none was or it was not closed.</summary>
    public string? Recorded => Request.Record?.Hash;

    /// <summary>Whether a session that was closed and done again to its end came out differently.</summary>
    public bool IsOtherThanRecorded => Recorded is { } hash && End.Ticks == Request.Record!.End && hash != $"{Hash:x16}";

    /// <summary>Whether the numbers went on and the card did not fail.</summary>
    public bool IsGood => Trouble is null && !IsOtherThanRecorded && Outcome?.Kind is not (OutcomeKind.Failed or OutcomeKind.Undecided);
}
