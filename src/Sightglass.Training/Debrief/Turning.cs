using System.Collections.Immutable;
using Sightglass.Basics.Time;
using Sightglass.Training.Drills;
using Sightglass.Training.Evaluation;

namespace Sightglass.Training.Debrief;

/// <summary>What decided a drill, and when: from there on the outcome was settled.</summary>
/// <param name="Kind">What sort of thing.</param>
/// <param name="Line">The line of the sheet that it is about; null while nothing is decided.</param>
/// <param name="At">The moment, or null.</param>
/// <param name="Act">The control that the trainee put a hand to last before it, or null.</param>
/// <param name="Headline">The outcome in one sentence, kept unsaid.</param>
/// <param name="Why">Why it was decided there, kept unsaid.</param>
public sealed record Turning(TurningKind Kind, EvaluationLine? Line, SimTime? At, DrillNote? Act, FormattableString Headline, FormattableString Why)
{
    /// <summary>From a drill that was run.</summary>
    public static Turning Of(BoundDrill drill, DrillResult result)
    {
        ArgumentNullException.ThrowIfNull(drill);
        ArgumentNullException.ThrowIfNull(result);
        EvaluationSheet sheet = result.Sheet;
        ImmutableArray<DrillNote> notes = result.Outcome.Notes;
        if (result.Trouble is not null)
        {
            return new(TurningKind.Open, null, null, null, $"Undecided: the numbers could not go on.", $"A run that the model cannot follow is judged by nobody.");
        }

        if (sheet.EndedAt is not { } ended)
        {
            return new(TurningKind.Open, null, null, null, $"Under way: nothing is decided yet.", $"It has not been said to be done, and its time is not over.");
        }

        if (sheet.IsPassed)
        {
            return Settled(drill, sheet, notes, ended);
        }

        (EvaluationLine? line, SimTime at) = sheet.Failures.Select(l => ((EvaluationLine?)l, At: l.At ?? ended)).OrderBy(f => f.At).FirstOrDefault();
        return line is null ? OfPoints(sheet) : Failed(drill, sheet, notes, line, at, ended);
    }

    private static Turning Settled(BoundDrill drill, EvaluationSheet sheet, ImmutableArray<DrillNote> notes, SimTime ended)
    {
        EvaluationLine? last = sheet.Lines.Where(l => l is { IsCritical: true, IsMet: true, Layer: EvaluationLayer.Result } && l.At is not null).MaxBy(l => l.At);
        if (last?.At is not { } at)
        {
            return new(TurningKind.Settled, null, ended, null, $"Passed: everything was in order to the end, at {new ClockWords(ended)}.", $"Nothing had to be brought about, and nothing that is forbidden came about.");
        }

        DrillNote? act = ActBefore(notes, at);
        return new(
            TurningKind.Settled, last, at, act, TurningWords.Passed(drill, last, at),
            act is null
                ? (FormattableString)$"It was the last of what had to be brought about, and nothing undid it afterwards."
                : $"It was the last of what had to be brought about, after a hand was put to {act.What} at {new ClockWords(act.At)}; nothing undid it afterwards.");
    }

    private static Turning OfPoints(EvaluationSheet sheet)
    {
        EvaluationLine? most = sheet.Lines.Where(l => l.Worth < 0 || (l is { IsMet: false, Worth: > 0 })).MaxBy(l => Math.Abs(l.Worth));
        FormattableString headline = $"Not passed: {Points(sheet.Points)} of {Points(sheet.MostPoints)} points, and {Points(sheet.NeededPoints)} are needed.";
        return most is null
            ? new(TurningKind.Points, null, sheet.EndedAt, null, headline, $"Every critical line was met.")
            : new(TurningKind.Points, most, most.At, null, headline, $"Every critical line was met. Most points, {Points(Math.Abs(most.Worth))}, were lost here: {most.What}");
    }

    private static Turning Failed(BoundDrill drill, EvaluationSheet sheet, ImmutableArray<DrillNote> notes, EvaluationLine line, SimTime at, SimTime ended)
    {
        DrillNote? act = ActBefore(notes, at);
        if (line.Layer == EvaluationLayer.Result && at == ended)
        {
            return new(TurningKind.Missing, line, at, act, TurningWords.Missing(drill, line, at), TurningWords.WhyMissing(sheet, notes, at));
        }

        return new(TurningKind.Broken, line, at, act, TurningWords.Broken(drill, notes, line, at), TurningWords.WhyBroken(sheet.Failures.Count() - 1, act));
    }

    private static DrillNote? ActBefore(ImmutableArray<DrillNote> notes, SimTime at) => notes.LastOrDefault(n => n.Kind == DrillNoteKind.Touched && n.At <= at);

    private static string Points(double points) => points.ToString("0.#", System.Globalization.CultureInfo.InvariantCulture);
}
