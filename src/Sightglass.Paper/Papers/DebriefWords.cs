using Sightglass.Basics.Language;
using Sightglass.Basics.Quantities;
using Sightglass.Book.Model;
using Sightglass.Cards.Story;
using Sightglass.Plant.Plans;
using Sightglass.Training.Debrief;
using Sightglass.Training.Drills;
using Sightglass.Training.Evaluation;
using Sightglass.World.Runs;

namespace Sightglass.Paper.Papers;

/// <summary>Says what a debrief shows, in the language that is spoken.</summary>
public static class DebriefWords
{
    /// <summary>Who decides: on every sheet.</summary>
    public static string StandsIn => Say.It("A training aid: a model of the machine, not the machine. What was shown here stands in for no work on the real one. Local rules, the maker's manual and qualified people decide.");

    /// <summary>The outcome in one sentence.</summary>
    public static string Headline(Turning turning)
    {
        ArgumentNullException.ThrowIfNull(turning);
        return Say.Begin(Say.With(turning.Headline));
    }

    /// <summary>Why it was decided there.</summary>
    public static string Why(Turning turning)
    {
        ArgumentNullException.ThrowIfNull(turning);
        return Say.Begin(Say.With(turning.Why));
    }

    /// <summary>What a number of the truth is.</summary>
    public static string Name(DebriefSignal signal)
    {
        ArgumentNullException.ThrowIfNull(signal);
        return Say.Begin(signal.Instrument is { } item ? Say.Book(item.Name) : QuantityWords.Of(signal.Name));
    }

    /// <summary>A number with its unit.</summary>
    public static string Value(DebriefSignal signal, double si)
    {
        ArgumentNullException.ThrowIfNull(signal);
        return double.IsFinite(si) ? QuantityFormat.Text(si, signal.Unit, signal.Resolution ?? Step(signal, si)) : "–";
    }

    /// <summary>Points as they are written.</summary>
    public static string Points(double points) => points.ToString("0.#", System.Globalization.CultureInfo.InvariantCulture).Replace('-', '−');

    /// <summary>What an item showed, or how it stood.</summary>
    /// <param name="book">Of the machine.</param>
    /// <param name="seen">As it was seen.</param>
    public static string? Seen(ClassBook book, SeenItem seen)
    {
        ArgumentNullException.ThrowIfNull(book);
        ArgumentNullException.ThrowIfNull(seen);
        return seen.Shows is { } shows && book.Items[seen.Name].Reading is { } reading ? QuantityFormat.Text(shows, reading.Unit, reading.Resolution)
            : seen.Position is { } position ? new PositionWord(seen.Name, position).ToString()
            : seen.IsLit is { } lit ? (lit ? Say.It("lit") : Say.It("dark"))
            : null;
    }

    /// <summary>How a line of the sheet stands, in a word.</summary>
    public static string Stands(EvaluationLine line)
    {
        ArgumentNullException.ThrowIfNull(line);
        return line switch
        {
            { Layer: EvaluationLayer.Help, IsMet: true } => Say.It("taken"),
            { IsMet: true } => Say.It("met"),
            { IsCritical: true } => Say.It("not met, critical"),
            _ => Say.It("not met"),
        };
    }

    /// <summary>Whether a note is what the program found, not what anybody could see: it is not told to who judges for themselves.</summary>
    public static bool IsFound(DrillNoteKind kind) => kind is DrillNoteKind.Reached or DrillNoteKind.Lost or DrillNoteKind.Never or DrillNoteKind.Breach or DrillNoteKind.ReportedRight or DrillNoteKind.ReportedWrong;

    /// <summary>What a drill notes, in as few words as a picture has room for; empty for none.</summary>
    public static string Label(BoundDrill drill, DrillNote note)
    {
        ArgumentNullException.ThrowIfNull(drill);
        ArgumentNullException.ThrowIfNull(note);
        return note.Kind switch
        {
            DrillNoteKind.Touched => Say.Begin(Say.Book(note.What)),
            DrillNoteKind.ReportedRight or DrillNoteKind.ReportedWrong => Say.Begin(Say.Book(drill.Drill.Reports[note.Number].Name)),
            DrillNoteKind.Never => Say.Begin(Say.Book(drill.Drill.MustNever[note.Number].Name)),
            DrillNoteKind.Reached or DrillNoteKind.Lost => "",
            _ => Sentence(drill, note) ?? "",
        };
    }

    /// <summary>What a drill notes, as a sentence; null for what nobody needs to read.</summary>
    public static string? Sentence(BoundDrill drill, DrillNote note)
    {
        ArgumentNullException.ThrowIfNull(drill);
        ArgumentNullException.ThrowIfNull(note);
        Drill asked = drill.Drill;
        return note.Kind switch
        {
            DrillNoteKind.Cue => note.At == Basics.Time.SimTime.Zero ? null : Say.It("What it is about came about."),
            DrillNoteKind.Known => note.What.Length > 0 ? Say.With($"It could be known: {note.What}.") : null,
            DrillNoteKind.Reached => Say.With($"So from here on: {asked.Objectives[note.Number].Name}."),
            DrillNoteKind.Lost => Say.With($"No longer so: {asked.Objectives[note.Number].Name}."),
            DrillNoteKind.Never => Say.With($"Must never be, and came about: {asked.MustNever[note.Number].Name}."),
            DrillNoteKind.Event => Happened(asked.Events[note.Number]),
            DrillNoteKind.Breach => Breach(note),
            DrillNoteKind.Injured => Say.With($"A danger met somebody: {new MechanismWords(note.What)}."),
            DrillNoteKind.Touched => Say.With($"A hand put to {note.What}."),
            DrillNoteKind.Told => Say.With($"Spoke to the {note.What}."),
            DrillNoteKind.ReportedRight => Say.With($"Reported, and it was so: {asked.Reports[note.Number].Name}."),
            DrillNoteKind.ReportedWrong => Say.With($"Reported, and it was not so: {asked.Reports[note.Number].Name}."),
            DrillNoteKind.Hint => Say.With($"Took a hint: {asked.Hints[note.Number].Says}"),
            DrillNoteKind.Declared => Say.It("Said to be done."),
            DrillNoteKind.TimeOver => Say.It("The time was over."),
            DrillNoteKind.Stopped => Say.It("Called to stop."),
            DrillNoteKind.TakenOver => Say.It("The instructor took over."),
            DrillNoteKind.HandedBack => Say.It("The instructor handed back."),
            DrillNoteKind.Interfered => Say.With($"The instructor changed something: {QuantityWords.Of(note.What)}."),
            _ => null,
        };
    }

    private static string Happened(DrillEvent e) => e switch
    {
        { Says.Length: > 0, By: { } by } => $"{Say.Begin(Say.Book(by))}: {Say.Book(e.Says)}",
        { Says.Length: > 0 } => Say.Book(e.Says),
        { Fault: { } fault, TakesOut: true } => Say.With($"Gone by itself: {new PositionWord(e.On, fault)}, {e.On}."),
        { Fault: { } fault } => Say.With($"A fault came: {new PositionWord(e.On, fault)}, {e.On}."),
        _ => Say.With($"{Say.Begin(QuantityWords.Of(e.Sets ?? ""))} went to {new PositionWord(e.Sets ?? "", e.To)}."),
    };

    private static string Breach(DrillNote note) => (World.People.Breach)note.Number switch
    {
        World.People.Breach.MayNot => Say.With($"Operated what is not theirs: {note.What}"),
        World.People.Breach.NotPermitted => Say.With($"Operated without the permission that it needs: {note.What}"),
        _ => Say.With($"Took away what others had set: {note.What}"),
    };

    /// <summary>Three digits are enough of what no instrument shows.</summary>
    private static double Step(DebriefSignal signal, double si)
    {
        double size = Math.Abs(signal.Unit.FromSi(si));
        double power = size > 0 ? Math.Floor(Math.Log10(size)) : 0;
        return Math.Pow(10, Math.Clamp(power - 2, -4, 0)) * signal.Unit.Factor;
    }
}
