using System.Collections.Immutable;
using Sightglass.Basics.Language;
using Sightglass.Basics.Quantities;
using Sightglass.Basics.Time;
using Sightglass.Drawing.Timelines;
using Sightglass.Training.Debrief;
using Sightglass.Training.Drills;
using Sightglass.World.Journal;

namespace Sightglass.Paper.Papers;

/// <summary>The timeline of a debrief: where the trainee was, what was done and said, what came about, the truth beside what they could read, what was reached and what must never be.</summary>
public static class DebriefLanes
{
    /// <summary>Numbers of the truth that one picture holds.</summary>
    public const int MostTraces = 4;

    /// <param name="film">What is shown.</param>
    /// <param name="width">Pixels.</param>
    /// <param name="narrow">Whether names stand over their lanes.</param>
    /// <param name="parts">The moment at which it parts from the record; null for the record itself.</param>
    /// <param name="tells">Whether what was found is shown: what was reached, what must never be, and what decided it.</param>
    public static Timeline Of(DebriefFilm film, double width, bool narrow = false, SimTime? parts = null, bool tells = true)
    {
        ArgumentNullException.ThrowIfNull(film);
        return new()
        {
            Title = Say.With($"What happened from 0:00 to {new ClockWords(film.End)}, on lanes"),
            Across = (0, Math.Max(film.End.Seconds, 1)),
            Width = width,
            NamesAbove = narrow,
            Moments = [.. Moments(film, parts, tells)],
            Lanes = [Places(film), Acts(film), .. Said(film, tells), .. Happened(film), .. film.Telling(MostTraces).Select(i => Trace(film, i)), .. tells ? Objectives(film).Concat(Nevers(film)) : []],
        };
    }

    private static IEnumerable<TimelineMoment> Moments(DebriefFilm film, SimTime? parts, bool tells)
    {
        ImmutableArray<DrillNote> notes = film.Result.Outcome.Notes;
        if (tells && film.Turning is { At: { } at, Kind: TurningKind.Broken or TurningKind.Settled } turning)
        {
            yield return new(at.Seconds, turning.Kind == TurningKind.Broken ? Say.It("decided here: not passed") : Say.It("decided here"), turning.Kind == TurningKind.Broken);
        }

        if (parts is { } moment)
        {
            yield return new(moment.Seconds, Say.It("another way from here"));
        }

        if (film.Result.Sheet.KnownAt is { } known && known > SimTime.Zero)
        {
            yield return new(known.Seconds, Say.It("could be known"));
        }

        if (notes.FirstOrDefault(n => n.Kind is DrillNoteKind.Declared or DrillNoteKind.TimeOver) is { } over)
        {
            yield return new(over.At.Seconds, over.Kind == DrillNoteKind.Declared ? Say.It("done, they said") : Say.It("time over"));
        }
    }

    private static TimelineLane Places(DebriefFilm film)
    {
        List<TimelineBar> bars = [];
        DebriefMoment first = film.Moments[0];
        for (int i = 1; i <= film.Moments.Length; i++)
        {
            DebriefMoment? now = i < film.Moments.Length ? film.Moments[i] : null;
            DebriefStand stood = first.People[film.Drill.Person];
            if (now is null || now.People[film.Drill.Person] != stood)
            {
                double to = now?.At.Seconds ?? film.End.Seconds;
                bars.Add(stood.Towards is { } towards
                    ? new(first.At.Seconds, to, Say.With($"to {towards}"), TimelineBarSort.Way)
                    : new(first.At.Seconds, to, Say.Begin(Say.Book(stood.Place))));
                first = now ?? first;
            }
        }

        return new(Say.It("place")) { Bars = [.. bars] };
    }

    private static TimelineLane Acts(DebriefFilm film) => new(Say.It("hands")) { Marks = [.. Marks(film, TimelineMarkSort.Act, DrillNoteKind.Touched)] };

    private static IEnumerable<TimelineLane> Said(DebriefFilm film, bool tells)
    {
        TimelineMark[] marks =
        [
            .. film.Result.Journal.Where(j => j.Kind == JournalKind.Said).Select(j => new TimelineMark(j.Time.Seconds, TimelineMarkSort.Said, j.Text, j.Text)),
            .. tells ? Marks(film, TimelineMarkSort.Word, DrillNoteKind.ReportedRight, DrillNoteKind.ReportedWrong) : [],
            .. Marks(film, TimelineMarkSort.Word, DrillNoteKind.Hint, DrillNoteKind.Stopped, DrillNoteKind.TakenOver, DrillNoteKind.HandedBack),
        ];
        return marks.Length == 0 ? [] : [new TimelineLane(Say.It("said, reported")) { Marks = [.. marks] }];
    }

    private static IEnumerable<TimelineLane> Happened(DebriefFilm film)
    {
        TimelineMark[] marks =
        [
            .. film.Result.Journal.Where(j => j.Kind == JournalKind.Truth).Select(j => new TimelineMark(j.Time.Seconds, TimelineMarkSort.Truth, j.Text, j.Text)),
            .. Marks(film, TimelineMarkSort.Truth, DrillNoteKind.Event, DrillNoteKind.Interfered),
        ];
        return marks.Length == 0 ? [] : [new TimelineLane(Say.It("truth: faults and events"), IsTruth: true) { Marks = [.. marks] }];
    }

    private static TimelineLane Trace(DebriefFilm film, int number)
    {
        DebriefSignal signal = film.Signals[number];
        List<ImmutableArray<(double, double)>> shown = [];
        List<(double X, double Y)> stretch = [];
        foreach (DebriefMoment moment in film.Moments)
        {
            if (moment.Shown(signal) is { } value)
            {
                stretch.Add((moment.At.Seconds, signal.Unit.FromSi(value)));
            }
            else if (stretch.Count > 0)
            {
                shown.Add([.. stretch]);
                stretch.Clear();
            }
        }

        if (stretch.Count > 0)
        {
            shown.Add([.. stretch]);
        }

        ImmutableArray<(double X, double Y)> truth = [.. film.Moments.Select(m => (m.At.Seconds, signal.Unit.FromSi(m.Truth[number])))];
        double most = truth.Select(p => Math.Abs(p.Y)).Where(double.IsFinite).DefaultIfEmpty(0).Max();
        return new(Say.With($"truth: {DebriefWords.Name(signal)}"), IsTruth: true)
        {
            Trace = new(truth, [.. shown], QuantityFormat.Symbol(signal.Unit), most >= 100 ? 0 : most >= 10 ? 1 : 2),
        };
    }

    private static IEnumerable<TimelineLane> Objectives(DebriefFilm film)
    {
        for (int i = 0; i < film.Drill.Objectives.Length; i++)
        {
            List<TimelineBar> bars = [];
            List<TimelineMark> marks = [];
            string name = film.Drill.Drill.Objectives[i].Name;
            double? from = null;
            foreach (DrillNote note in film.Result.Outcome.Notes.Where(n => n.Number == i && (n.Kind is DrillNoteKind.Reached or DrillNoteKind.Lost)))
            {
                if (note.Kind == DrillNoteKind.Reached)
                {
                    from ??= note.At.Seconds;
                }
                else if (from is { } began)
                {
                    bars.Add(new(began, note.At.Seconds, Say.Book(name), TimelineBarSort.Holds));
                    marks.Add(new(note.At.Seconds, TimelineMarkSort.Lost, DebriefWords.Sentence(film.Drill, note)!));
                    from = null;
                }
            }

            if (from is { } last)
            {
                bars.Add(new(last, film.End.Seconds, Say.Book(name), TimelineBarSort.Holds));
            }

            yield return new(Say.Begin(Say.Book(name))) { Bars = [.. bars], Marks = [.. marks] };
        }
    }

    private static IEnumerable<TimelineLane> Nevers(DebriefFilm film)
    {
        TimelineMark[] marks = [.. Marks(film, TimelineMarkSort.Broken, DrillNoteKind.Never, DrillNoteKind.Breach, DrillNoteKind.Injured)];
        return film.Drill.MustNever.IsEmpty && marks.Length == 0 ? [] : [new TimelineLane(Say.It("must never")) { Marks = [.. marks] }];
    }

    private static IEnumerable<TimelineMark> Marks(DebriefFilm film, TimelineMarkSort sort, params DrillNoteKind[] kinds) =>
        from note in film.Result.Outcome.Notes
        where kinds.Contains(note.Kind)
        let words = DebriefWords.Sentence(film.Drill, note)
        where words is not null
        select new TimelineMark(note.At.Seconds, sort, words, DebriefWords.Label(film.Drill, note));
}
