using System.Collections.Immutable;
using System.Globalization;
using Sightglass.Basics.Diagnostics;
using Sightglass.Basics.Language;
using Sightglass.Basics.Quantities;
using Sightglass.Basics.Time;
using Sightglass.Book.Changes;
using Sightglass.Book.Model;
using Sightglass.Book.Recordings;
using Sightglass.Plant.Kinds;
using Sightglass.Plant.Plans;
using Sightglass.Trials.Recordings;
using Sightglass.Web.Live;
using Sightglass.World.Situations;

namespace Sightglass.Web.Recordings;

/// <summary>Recordings of the book that is served, files that are to become some, and the drills that are made of them; what takes a while is done one after the other.</summary>
/// <param name="shelf">The book.</param>
public sealed partial class RecordingDesk(BookShelf shelf) : IDisposable
{
    /// <summary>Files that are under work, and comparisons, that are kept to be looked at again.</summary>
    private const int Kept = 8;

    /// <summary>Drills that are asked for, of which what is typed is kept.</summary>
    private const int KeptDrills = 32;

    private const ulong Seed = 1;

    private readonly OneByOne _one = new();
    private readonly Lock _gate = new();
    private readonly List<MappingDraft> _drafts = [];
    private readonly List<(string Of, DrillDraft Draft)> _drills = [];
    private readonly List<(ServedBook Of, string Recording, RecordingWork Work)> _works = [];
    private readonly BookChanges _changes = new(shelf.Folder, KindLibrary.Catalog, () => [new Fleet().Add]);
    private int _brought;

    /// <summary>Recordings in the order of the author's files.</summary>
    public IReadOnlyList<Recording> All => [.. shelf.Book.Recordings.Values.OrderBy(r => r.Span)];

    /// <summary>Situations that draw from a recording, in the order of the author's files.</summary>
    public IReadOnlyList<Situation> DrawingFrom(string recording) => [.. shelf.Situations.Where(s => s.States?.Recording == recording)];

    /// <summary>Files of comma-separated values in the book's folder that no recording reads.</summary>
    public IReadOnlyList<string> Unread => [.. RecordingSource.Files(shelf.Folder).Except(shelf.Book.Recordings.Values.Select(r => r.File))];

    /// <summary>Files that were brought and are not in the book yet.</summary>
    public IReadOnlyList<MappingDraft> Brought
    {
        get
        {
            lock (_gate)
            {
                return [.. _drafts.Where(d => d.Bytes is not null && !IsThere(d.Mapping.File))];
            }
        }
    }

    /// <summary>A file under work by its key: one that was brought, or the path of one that lies in the book's folder.</summary>
    /// <returns>Null where there is none, or with why it cannot be read.</returns>
    public (MappingDraft? Draft, string? Wrong) Open(string key)
    {
        ArgumentNullException.ThrowIfNull(key);
        MappingDraft? known;
        lock (_gate)
        {
            known = _drafts.Find(d => d.Key == key);
        }

        if (known?.Bytes is not null || !key.EndsWith(".csv", StringComparison.OrdinalIgnoreCase))
        {
            return (known, null);
        }

        DiagnosticList found = [];
        SourceText? source = RecordingSource.In(shelf.Folder, key, found);
        return source is not null && known is not null && source.Text == known.Source.Text ? (known, null) : Add(key, source, null, key, found);
    }

    /// <summary>A recording of the book, to be changed: with what was typed so far, as long as the book says what it said then.</summary>
    /// <returns>Null where there is none, or with why its file cannot be read.</returns>
    public (MappingDraft? Draft, string? Wrong) Change(string recording)
    {
        ArgumentNullException.ThrowIfNull(recording);
        DiagnosticList found = [];
        if (!shelf.Book.Recordings.TryGetValue(recording, out Recording? read))
        {
            return (null, null);
        }

        if (RecordingSource.In(shelf.Folder, read.File, found) is not { } source || RecordingLook.At(source, found) is not { } look)
        {
            return (null, found.Select(Told).FirstOrDefault());
        }

        string key = ChangeKey(recording);
        RecordingMapping said = RecordingMapping.Of(look, read);
        lock (_gate)
        {
            MappingDraft? known = _drafts.Find(d => d.Key == key);
            if (known is not null && known.Source.Text == source.Text && known.Opened!.SaysSameAs(said))
            {
                return (known, null);
            }

            return Keep(new(key, source, look, null, said) { Opened = said }, known);
        }
    }

    /// <summary>Takes in a file.</summary>
    /// <param name="name">What it is called where it comes from.</param>
    /// <param name="file">Read no further than a recording may be large.</param>
    /// <param name="cancel">Gives up.</param>
    /// <returns>The file under work, or why it is not taken.</returns>
    public async Task<(MappingDraft? Draft, string? Wrong)> Bring(string name, Stream file, CancellationToken cancel = default)
    {
        ArgumentNullException.ThrowIfNull(name);
        ArgumentNullException.ThrowIfNull(file);
        using MemoryStream kept = new();
        byte[] piece = new byte[64 << 10];
        for (int read; kept.Length <= RecordingSource.MostBytes && (read = await file.ReadAsync(piece, cancel)) > 0;)
        {
            kept.Write(piece, 0, read);
        }

        byte[] bytes = kept.ToArray();
        string title = Path.GetFileNameWithoutExtension(name.Replace('\\', '/')).Trim();
        string path = NewFile.PathOf("recordings", title.Length > 0 ? title : "recording", IsThere, ".csv");
        string key = $"brought-{Interlocked.Increment(ref _brought).ToString(CultureInfo.InvariantCulture)}";
        return await _one.Do(() =>
        {
            DiagnosticList found = [];
            return Add(key, RecordingSource.Of(bytes, path, found), bytes, path, found);
        }, cancel);
    }

    /// <summary>Forgets a file that was brought, with what was said of it.</summary>
    public void Forget(MappingDraft draft)
    {
        lock (_gate)
        {
            _ = _drafts.Remove(draft);
        }
    }

    /// <summary>What is asked of a drill that is to start from a recording of the book, or from a file under work; kept as long as the program runs.</summary>
    /// <param name="of">The recording's name, or the file's key.</param>
    public DrillDraft DrillOf(string of)
    {
        lock (_gate)
        {
            int at = _drills.FindIndex(d => d.Of == of);
            (string, DrillDraft Draft) kept = at >= 0 ? _drills[at] : (of, new());
            _ = at >= 0 && _drills.Remove(kept);
            if (_drills.Count >= KeptDrills)
            {
                _drills.RemoveAt(0);
            }

            _drills.Add(kept);
            return kept.Draft;
        }
    }

    /// <summary>Keeps what is said of a file, and looks what the book makes of it.</summary>
    public async Task<MappedRecording> Map(MappingDraft draft, RecordingMapping mapping)
    {
        ArgumentNullException.ThrowIfNull(draft);
        if (draft.Mapping != mapping)
        {
            (draft.Mapping, draft.Work) = (mapping, null);
        }

        ServedBook now = shelf.Now;
        MappedRecording mapped = await _one.Do(() => Read(now, mapping, draft.Source));
        if (draft.Mapping == mapping)
        {
            draft.Mapped = mapped;
        }

        return mapped;
    }

    /// <summary>The comparison of a recording of the book that was asked for last, of the book as it is served; null where none was.</summary>
    public RecordingWork? Last(string recording)
    {
        ServedBook now = shelf.Now;
        lock (_gate)
        {
            return _works.FindLast(w => w.Recording == recording && w.Of == now).Work;
        }
    }

    /// <summary>Begins a comparison of a recording of the book with the machine, after what is under way.</summary>
    /// <param name="recording">Of the book.</param>
    /// <param name="situation">That draws from it; null: all else is as usual.</param>
    /// <param name="rows">How many rows are run, 1 to 10,000.</param>
    /// <param name="after">How long the machine has to settle, s.</param>
    public RecordingWork Compare(Recording recording, Situation? situation, int rows, double after)
    {
        ArgumentNullException.ThrowIfNull(recording);
        ServedBook book = shelf.Now;
        RecordingWork work = new(rows, after);
        lock (_gate)
        {
            if (_works.Count >= Kept && _works.FindIndex(w => w.Work.IsOver) is >= 0 and var old)
            {
                _works[old].Work.Dispose();
                _works.RemoveAt(old);
            }

            _works.Add((book, recording.Name, work));
        }

        return Begin(book, recording, situation, work);
    }

    /// <summary>Begins a comparison of a file under work, which was read without errors; all that it does not tell is as usual.</summary>
    public RecordingWork Compare(MappingDraft draft, int rows, double after)
    {
        ArgumentNullException.ThrowIfNull(draft);
        Recording recording = draft.Mapped?.Recording ?? throw new InvalidOperationException("The mapping has errors.");
        draft.Work?.Stop();
        draft.Work = new(rows, after);
        return Begin(shelf.Now, recording, null, draft.Work);
    }

    public void Dispose()
    {
        lock (_gate)
        {
            _works.ForEach(w => w.Work.Stop());
            _drafts.ForEach(d => d.Work?.Stop());
        }

        _one.Dispose();
    }

    private bool IsThere(string path) => Path.Exists(Path.Combine(shelf.Folder, path));

    private (MappingDraft? Draft, string? Wrong) Add(string key, SourceText? source, byte[]? bytes, string path, DiagnosticList found)
    {
        if (source is null || RecordingLook.At(source, found) is not { } look)
        {
            return (null, found.Select(Told).FirstOrDefault());
        }

        lock (_gate)
        {
            MappingDraft? before = _drafts.Find(d => d.Key == key);
            return Keep(new(key, source, look, bytes, First(look, path, bytes is null, before?.Mapping)), before);
        }
    }

    /// <summary>Keeps a file under work in the place of what was kept of it; the oldest that can be opened anew makes room.</summary>
    private (MappingDraft? Draft, string? Wrong) Keep(MappingDraft draft, MappingDraft? before)
    {
        _ = before is not null && _drafts.Remove(before);
        if (_drafts.Count >= Kept && !_drafts.Remove(_drafts.Find(d => d.Bytes is null || IsThere(d.Mapping.File))!))
        {
            return (null, Say.With($"{Kept} files were brought and are not in the book yet; put them into it, or forget one"));
        }

        _drafts.Add(draft);
        return (draft, null);
    }

    private static string ChangeKey(string recording) => "change " + recording;

    /// <summary>What is said of a file to begin with: what was typed before the file changed, what a recording says of it already, or nothing.</summary>
    private RecordingMapping First(RecordingLook look, string path, bool isThere, RecordingMapping? typed)
    {
        string name = Path.GetFileNameWithoutExtension(path).Replace('-', ' ').Replace('_', ' ');
        RecordingMapping nothing = RecordingMapping.Of(look, name, path);
        return typed is not null ? typed with { Columns = [.. nothing.Columns.Select(c => typed.Columns.FirstOrDefault(t => t.Head == c.Head) ?? c)] }
            : isThere && shelf.Book.Recordings.Values.FirstOrDefault(r => r.File == path) is { } read ? RecordingMapping.Of(look, read) with { Name = Free(read.Name) }
            : nothing;
    }

    private string Free(string name) => Enumerable.Range(2, int.MaxValue - 2).Select(i => string.Create(CultureInfo.InvariantCulture, $"{name} {i}")).First(n => !shelf.Book.Recordings.ContainsKey(n));

    private RecordingWork Begin(ServedBook book, Recording recording, Situation? situation, RecordingWork work)
    {
        _ = _one.Do(() => Run(book, recording, situation, work));
        return work;
    }

    private static MappedRecording Read(ServedBook book, RecordingMapping mapping, SourceText source) => MappedRecording.Read(mapping, source, book.Book, KindLibrary.Catalog, (read, found) =>
    {
        if (book.Fleet.MachineOf(null, read.Train) is { } plan && BoundRecording.Bind(read, plan, found) is not null)
        {
            SituationStart.Bind(plan, new() { Name = read.Name, Span = read.Span, Train = read.Train, States = RecordedRows.All(read) }, found);
        }
    });

    private static RecordingWork Run(ServedBook book, Recording recording, Situation? situation, RecordingWork work)
    {
        try
        {
            DiagnosticList found = [];
            RecordingReport? report = RecordingReport.Run(book.Fleet, recording, situation, work.Rows, SimTime.FromSeconds(work.AfterSeconds), new(Seed, 0), found, work.Tell, work.Stopped);
            work.End(report, report is null ? [.. found.Where(d => d.Severity == Severity.Error).Select(Told)] : []);
            return work;
        }
        catch (Exception e) when (e is not OutOfMemoryException)
        {
            work.End(null, [Say.With($"It could not be compared: {e.Message}")]);
            throw;
        }
    }

    /// <summary>A finding as a page tells it; a place in a file that was brought is its line.</summary>
    internal static string Told(Diagnostic finding) => finding.Fix is { } fix ? $"{Where(finding)}{finding.Told}; {fix}" : $"{Where(finding)}{finding.Told}";

    private static string Where(Diagnostic finding) => finding.Span.Line > 0 && finding.Span.Path.EndsWith(".csv", StringComparison.OrdinalIgnoreCase) ? Say.With($"line {finding.Span.Line}, sign {finding.Span.Column}: ") : "";
}
