using System.Collections.Immutable;
using Sightglass.Training.Evaluation;
using Sightglass.World.Journal;
using Sightglass.World.Runs;

namespace Sightglass.Training.Drills;

/// <summary>A drill that was run without pages.</summary>
/// <param name="Outcome">What came of it.</param>
/// <param name="Sheet">What it earned.</param>
/// <param name="Card">How the card ended that was worked in the trainee's stead; null where nobody did anything.</param>
/// <param name="Journal">What happened; empty where nobody wants to read it.</param>
/// <param name="Trouble">Why the numbers could not go on, or null.</param>
/// <param name="Hash">Of the trajectory.</param>
/// <param name="Steps">Of all networks.</param>
public sealed record DrillResult(DrillOutcome Outcome, EvaluationSheet Sheet, Outcome? Card, ImmutableArray<JournalEntry> Journal, string? Trouble, ulong Hash, long Steps)
{
    public bool IsPassed => Trouble is null && Sheet.IsPassed;
}
