using System.Collections.Immutable;
using Sightglass.Basics.Time;
using Sightglass.Training.Evaluation;
using Sightglass.World.People;

namespace Sightglass.Training.Debrief;

/// <summary>How it would have gone.</summary>
/// <param name="Film">From the start: up to <paramref name="Parts"/> it is the record's.</param>
/// <param name="Parts">The moment from which something else was done: that which was asked for, or later where the trainee was on the way or at something then.</param>
/// <param name="Refused">The number of the act that could not be done, from 0, and why; null where all could.</param>
public sealed record WhatIfResult(DebriefFilm Film, SimTime Parts, (int Act, Hindrance Why)? Refused)
{
    /// <summary>Lines of the sheet beside those of another one: of each what it is about, how it stood in the other and how it stands here; null where it is not on that sheet.</summary>
    public ImmutableArray<(EvaluationLine? Before, EvaluationLine? Now)> Beside(EvaluationSheet before)
    {
        ArgumentNullException.ThrowIfNull(before);
        ImmutableArray<EvaluationLine> now = Film.Result.Sheet.Lines;
        List<(EvaluationLine?, EvaluationLine?)> pairs = [.. now.Select(n => (before.Lines.FirstOrDefault(b => Same(b, n)), (EvaluationLine?)n))];
        pairs.AddRange(before.Lines.Where(b => !now.Any(n => Same(b, n))).Select(b => ((EvaluationLine?)b, (EvaluationLine?)null)));
        return [.. pairs.OrderBy(p => (p.Item1 ?? p.Item2)!.Layer)];
    }

    private static bool Same(EvaluationLine a, EvaluationLine b) => a.Layer == b.Layer && a.What.ToString(System.Globalization.CultureInfo.InvariantCulture) == b.What.ToString(System.Globalization.CultureInfo.InvariantCulture);
}
