using System.Collections.Immutable;
using Sightglass.Basics.Diagnostics;
using Sightglass.Basics.Language;
using Sightglass.Book;
using Sightglass.Book.Changes;
using Sightglass.Book.Model;
using Sightglass.Book.Recordings;
using Sightglass.Cards;
using Sightglass.Cards.Programs;
using Sightglass.Plant.Plans;
using Sightglass.Training.Drills;
using Sightglass.Trials;
using Sightglass.Web.Live;

namespace Sightglass.Web.Recordings;

/// <summary>What is written into the book: a mapping with the file that was brought, and the first version of a drill.</summary>
public sealed partial class RecordingDesk
{
    /// <summary>The cards that a drill from a recording can be solved by, each with its title: those of its train, or of the machine alone.</summary>
    public IReadOnlyList<(string Name, string Title)> Cards(string? train)
    {
        ServedBook now = shelf.Now;
        return [.. now.Book.CardTexts.Where(t => now.Book.TrainOf(t) == train)
            .Select(t => (NameOf(t), CardReader.Read(t, now.BookOf(null, train), [])?.Title ?? ""))
            .Where(c => c.Item2.Length > 0)];
    }

    /// <summary>The states of a stretch, or why there are none.</summary>
    public static (StatesDraw? States, string? Wrong) Stretch(Recording recording, DrillAsk ask)
    {
        ArgumentNullException.ThrowIfNull(ask);
        DiagnosticList found = [];
        StatesDraw? states = RecordedRows.Check(recording, Said(ask.From), Said(ask.To), Said(ask.Every), found);
        return (states, states is null ? FirstError(found) : null);
    }

    /// <summary>Puts a mapping into the book, with its file where that was brought.</summary>
    public Task<MadeFiles> Put(MappingDraft draft)
    {
        ArgumentNullException.ThrowIfNull(draft);
        return draft.Opened is { } opened ? _one.Do(() => Changed(draft, opened)) : _one.Do(() => draft.Mapped?.Recording is null ? Refused(NotMapped(draft), []) : Written(draft, [MappingFile(draft)], null));
    }

    /// <summary>Makes the first version of a drill from a recording of the book, and puts it there.</summary>
    public Task<MadeFiles> Make(Recording recording, DrillAsk ask)
    {
        ArgumentNullException.ThrowIfNull(recording);
        ArgumentNullException.ThrowIfNull(ask);
        return _one.Do(() => Drafted(recording, ask) switch { ({ } drill, _) => Written(null, [drill], ask.Title.Trim()), (_, var wrong) => Refused(wrong!, []) });
    }

    /// <summary>Makes the first version of a drill from a file under work, and puts both into the book, or neither.</summary>
    public Task<MadeFiles> Make(MappingDraft draft, DrillAsk ask)
    {
        ArgumentNullException.ThrowIfNull(draft);
        ArgumentNullException.ThrowIfNull(ask);
        return _one.Do(() =>
        {
            (NewFile? drill, string? wrong) = draft.Mapped?.Recording is { } recording ? Drafted(recording, ask) : (null, NotMapped(draft));
            return drill is null ? Refused(wrong!, []) : Written(draft, [MappingFile(draft), drill], ask.Title.Trim());
        });
    }

    /// <summary>Writes what differs into the recording's own file, where it says still what it said when it was opened.</summary>
    private MadeFiles Changed(MappingDraft draft, RecordingMapping opened)
    {
        if (draft.Mapped?.Recording is null)
        {
            return Refused(NotMapped(draft), []);
        }

        shelf.Reread();
        if (!shelf.Book.Recordings.TryGetValue(opened.Name, out Recording? now) || !RecordingMapping.Of(draft.Look, now).SaysSameAs(opened))
        {
            return Refused(Say.It("the recording was changed by somebody else in the meantime; open it again"), []);
        }

        ChangePlan plan = _changes.ApplyEntry(new("recordings", opened.Name, opened.Addition.Body, draft.Mapping.Addition.Body));
        if (plan.File is not { } file)
        {
            return Refused(plan.Refused!, []);
        }

        shelf.Reread();
        Forget(draft);
        return new(Say.With($"It is changed, in {file.Path}."), [], IsIn: true, opened.Name, null) { Changed = file };
    }

    private static string? Said(string text) => text.Trim() is { Length: > 0 } said ? said : null;

    private static string NotMapped(MappingDraft draft) => draft.Mapping.Columns.Any(c => c.IsUsed) ? Say.It("the mapping has errors") : Say.It("nothing is said of any column yet");

    private static string NameOf(SourceText card) => Path.GetFileNameWithoutExtension(card.Path);

    private static string FirstError(DiagnosticList found) => Told(found.First(d => d.Severity == Severity.Error));

    private static MadeFiles Refused(string why, ImmutableArray<NewFile> files) => new(Say.With($"It is not in the book: {why}."), files, IsIn: false, null, null);

    private NewFile MappingFile(MappingDraft draft) =>
        new(NewFile.PathOf("recordings", draft.Mapping.Name, IsThere), [$"What the columns of {draft.Mapping.File} are of this book."], [draft.Mapping.Addition]);

    /// <summary>The drill as a file, or why there is none.</summary>
    private (NewFile? File, string? Wrong) Drafted(Recording recording, DrillAsk ask)
    {
        ServedBook now = shelf.Now;
        DiagnosticList found = [];
        string title = ask.Title.Trim();
        if (title.Length == 0)
        {
            return (null, Say.It("the drill has no title"));
        }

        if (BookNames.WhyNot(RecordedDrill.NameOf(title)) is { } why)
        {
            return (null, Say.With($"“{title}” cannot be the title of a drill: {why}"));
        }

        if (now.Book.CardTexts.FirstOrDefault(t => NameOf(t) == ask.Card) is not { } card)
        {
            return (null, Say.It("no card is chosen that solves it"));
        }

        (StatesDraw? states, string? none) = Stretch(recording, ask);
        if (states is null)
        {
            return (null, none);
        }

        if (now.Fleet.MachineOf(null, recording.Train) is not { } plan || Program(card, plan, found) is not { } program)
        {
            return (null, FirstError(found));
        }

        RecordedDrill drill = new(title, states, ask.Card, program, RecordedDrill.LikeFor(now.Book, recording, ask.Card), plan.Book);
        return drill.Drill.Objectives.IsEmpty ? (null, Say.It("the card asks for nothing that is a fact of the book, so there is nothing to be evaluated"))
            : DrillBinder.Bind(plan, drill.Drill, drill.Situation, found) is null ? (null, FirstError(found))
            : (drill.File(IsThere), null);
    }

    private static CardProgram? Program(SourceText text, Plan plan, DiagnosticList found) =>
        CardReader.Read(text, plan.Book, found) is { HasErrors: false } card && TrialPreparation.Choices(plan, card, found) is [{ Program: var program }, ..] && !found.HasErrors ? program : null;

    private MadeFiles Written(MappingDraft? draft, ImmutableArray<NewFile> files, string? drill)
    {
        ImmutableArray<ChangePlan> plans = draft?.Bytes is { } bytes ? _changes.AddFiles(files, (draft.Mapping.File, bytes)) : _changes.AddFiles(files);
        if (plans.FirstOrDefault(p => p.Refused is not null)?.Refused is { } refused)
        {
            return Refused(refused, files);
        }

        shelf.Reread();
        return new(Say.With($"It is in the book, in {string.Join(", ", files.Select(f => f.Path))}."), files, IsIn: true, draft?.Mapping.Name, drill);
    }
}
