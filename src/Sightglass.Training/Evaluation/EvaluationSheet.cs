using System.Collections.Immutable;
using Sightglass.Basics.Time;

namespace Sightglass.Training.Evaluation;

/// <summary>What a drill's run earned. The same outcome and the same version of the rules give the same sheet, for ever.</summary>
/// <param name="Rules">Version of the rules by which it was made.</param>
/// <param name="Lines">In the order of layers.</param>
/// <param name="Points">Earned, never below zero.</param>
/// <param name="MostPoints">That could be earned.</param>
/// <param name="NeededPoints">From which it is passed, beside every critical line.</param>
/// <param name="KnownAt">When the trainee could know what there was to do; null: never.</param>
/// <param name="EndedAt">When they said that they were done or the time was over; null: it is under way.</param>
public sealed record EvaluationSheet(int Rules, ImmutableArray<EvaluationLine> Lines, double Points, double MostPoints, double NeededPoints, SimTime? KnownAt, SimTime? EndedAt)
{
    /// <summary>What decides it: critical lines that were not met, in the order of time.</summary>
    public IEnumerable<EvaluationLine> Failures => Lines.Where(l => l is { IsCritical: true, IsMet: false }).OrderBy(l => l.At ?? SimTime.Never);

    public bool IsPassed => EndedAt is not null && Points >= NeededPoints - 1e-9 && !Failures.Any();
}
