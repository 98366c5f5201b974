using System.Collections.Immutable;
using Sightglass.Basics.Language;
using Sightglass.Basics.Time;
using Sightglass.Book.Model;
using Sightglass.Training.Drills;
using Sightglass.Training.Evaluation;

namespace Sightglass.Web.Room.Instructor;

/// <summary>Reads a sheet while the drill goes on: what is there, what is on its way, what may still come, what is lost.</summary>
public static class Falling
{
    /// <param name="drill">What is asked.</param>
    /// <param name="look">As it stands.</param>
    /// <param name="progress">How far its objectives have come.</param>
    public static ImmutableArray<FallLine> Of(BoundDrill drill, DrillLook look, ImmutableArray<DrillProgress> progress)
    {
        ArgumentNullException.ThrowIfNull(drill);
        ArgumentNullException.ThrowIfNull(look);
        if (look.Sheet is not { } sheet)
        {
            return [];
        }

        // Results stand in the sheet as the book has them, after what was reported where there is something to report.
        int objective = drill.Drill.Reports.IsEmpty ? 0 : -1;
        ImmutableArray<FallLine>.Builder lines = ImmutableArray.CreateBuilder<FallLine>(sheet.Lines.Length);
        foreach (EvaluationLine line in sheet.Lines)
        {
            (FallMark mark, string when) = line.Layer switch
            {
                EvaluationLayer.Result when objective < 0 => Report(line, look),
                EvaluationLayer.Result => Result(line, objective, drill.Drill.Objectives[objective], look, progress),
                EvaluationLayer.Help => line.IsMet ? (FallMark.Told, Clock(line.At)) : (FallMark.Broken, Clock(line.At)),
                EvaluationLayer.Told => line.IsMet ? (FallMark.Done, "") : look.IsJudged ? (FallMark.Broken, Say.It("not told")) : (FallMark.NotYet, Say.It("not yet")),
                _ when line.IsMet => look.IsJudged || line.At is not null ? (FallMark.Done, Clock(line.At)) : (FallMark.NotYet, Say.It("so far")),
                _ when line.At is null && !look.IsOver => (FallMark.NotYet, Say.It("not yet")),
                _ => (FallMark.Broken, Clock(line.At)),
            };
            objective += line.Layer == EvaluationLayer.Result ? 1 : 0;
            lines.Add(new(mark, line.Said, when, line.IsCritical, line.Shown, line.Layer));
        }

        return lines.MoveToImmutable();
    }

    private static (FallMark Mark, string When) Report(EvaluationLine line, DrillLook look) =>
        line.IsMet ? (FallMark.Done, Clock(line.At))
        : look.IsOver ? (FallMark.Broken, Say.It("not met"))
        : look.Notes.Any(n => n.Kind == DrillNoteKind.ReportedWrong) ? (FallMark.UnderWay, Say.With($"wrong at {Clock(line.At)}"))
        : (FallMark.NotYet, Say.It("not yet"));

    private static (FallMark Mark, string When) Result(EvaluationLine line, int number, DrillObjective objective, DrillLook look, ImmutableArray<DrillProgress> progress)
    {
        if (line.IsMet)
        {
            // What was so from the start is to stay so, and is done only at the end.
            return line.At is not null ? (FallMark.Done, Clock(line.At)) : look.IsOver ? (FallMark.Done, Say.It("from the start")) : (FallMark.NotYet, Say.It("so far"));
        }

        SimTime? by = objective.Within is { } within && look.Sheet!.KnownAt is { } known ? known + SimTime.FromSeconds(within) : null;
        if (look.IsOver || (by < look.Now && objective.OrReported.IsEmpty))
        {
            return (FallMark.Broken, look.IsOver ? Say.It("not met") : Say.It("too late"));
        }

        SimTime cue = look.Notes.FirstOrDefault(n => n.Kind == DrillNoteKind.Cue)?.At ?? SimTime.Zero;
        DrillNote? lost = look.Notes.LastOrDefault(n => n.Kind == DrillNoteKind.Lost && n.Number == number && n.At > SimTime.Zero);
        bool wasBrought = look.Notes.Any(n => n.Kind == DrillNoteKind.Reached && n.Number == number && n.At > cue);
        string when = by is { } latest ? Say.With($"by {Clock(latest)}") : lost is not null ? Say.With($"lost at {Clock(lost.At)}") : Say.It("not yet");
        DrillProgress parts = number < progress.Length ? progress[number] : default;
        return wasBrought ? (FallMark.UnderWay, when)
            : parts.Now > parts.AtStart ? (FallMark.UnderWay, Say.With($"{parts.Now} of {parts.Of}"))
            : (FallMark.NotYet, when);
    }

    private static string Clock(SimTime? at) => at is { } time ? new ClockWords(time).ToString() : "";
}
