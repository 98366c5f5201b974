using System.Collections.Immutable;
using Sightglass.Basics.Time;
using Sightglass.Training.Drills;
using Sightglass.Training.Evaluation;

namespace Sightglass.Training.Debrief;

/// <summary>Says in one sentence how a drill came out, and why there: all kept unsaid.</summary>
internal static class TurningWords
{
    public static FormattableString Passed(BoundDrill drill, EvaluationLine line, SimTime at) => IsObjective(drill, line)
        ? (FormattableString)$"Passed: {line.What}, from {At(at)} on."
        : $"Passed: what was reported at {At(at)} was so.";

    public static FormattableString Missing(BoundDrill drill, EvaluationLine line, SimTime at) => IsObjective(drill, line)
        ? (FormattableString)$"Not passed: at the end, {At(at)}, it was not so: {line.What}."
        : $"Not passed: nothing was reported by the end, {At(at)}.";

    public static FormattableString WhyMissing(EvaluationSheet sheet, ImmutableArray<DrillNote> notes, SimTime at)
    {
        bool declared = notes.Any(n => n.Kind == DrillNoteKind.Declared);
        return (declared, sheet.KnownAt) switch
        {
            (true, { } known) => (FormattableString)$"It was said to be done at {At(at)}. That there was something to do could be known from {At(known)} on.",
            (true, null) => $"It was said to be done at {At(at)}. What there was to do was never where somebody could know it.",
            (false, { } known) => $"The time was over at {At(at)}. That there was something to do could be known from {At(known)} on.",
            _ => $"The time was over at {At(at)}. What there was to do was never where somebody could know it.",
        };
    }

    public static FormattableString Broken(BoundDrill drill, ImmutableArray<DrillNote> notes, EvaluationLine line, SimTime at)
    {
        switch (line.Layer)
        {
            case EvaluationLayer.Forbidden when notes.FirstOrDefault(n => n.Kind == DrillNoteKind.Never && n.At == at) is { } never:
                return $"Not passed: {drill.Drill.MustNever[never.Number].Name}, at {At(at)}.";
            case EvaluationLayer.Order:
                return $"Not passed: an order that safety needs was not kept at {At(at)}: {line.What}.";
            case EvaluationLayer.Help:
                return $"Not passed: somebody helped at {At(at)}, and prompted is not a pass.";
            case EvaluationLayer.Result when !IsObjective(drill, line):
                return $"Not passed: what was reported at {At(at)} was not so.";
            case EvaluationLayer.Result when notes.Any(n => n.Kind == DrillNoteKind.Lost && n.At == at):
                return $"Not passed: lost again at {At(at)}: {line.What}.";
            case EvaluationLayer.Result:
                return $"Not passed: too late, at {At(at)}: {line.What}.";
            default:
                return $"Not passed, at {At(at)}. {line.What}.";
        }
    }

    /// <param name="others">Critical lines beside it that were not met.</param>
    /// <param name="act">The last hand before it, or null.</param>
    public static FormattableString WhyBroken(int others, DrillNote? act) => (others, act) switch
    {
        (0, null) => (FormattableString)$"It decides alone: whatever else was reached, this is not passed.",
        (0, { } hand) => $"It decides alone: whatever else was reached, this is not passed. The hand before it was put to {hand.What} at {At(hand.At)}.",
        (_, null) => $"It was the first of {others + 1} critical lines that were not met.",
        (_, { } hand) => $"It was the first of {others + 1} critical lines that were not met. The hand before it was put to {hand.What} at {At(hand.At)}.",
    };

    private static bool IsObjective(BoundDrill drill, EvaluationLine line) => line.What is { ArgumentCount: 1 } what && drill.Drill.Objectives.Any(o => o.Name == what.GetArgument(0) as string);

    private static ClockWords At(SimTime time) => new(time);
}
