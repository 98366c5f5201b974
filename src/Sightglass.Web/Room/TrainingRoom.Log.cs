using System.Collections.Immutable;
using Sightglass.Basics.Diagnostics;
using Sightglass.Basics.Language;
using Sightglass.Basics.Time;
using Sightglass.Book.Model;
using Sightglass.Training.Drills;
using Sightglass.Web.Live;
using Sightglass.World.Records;
using Sightglass.World.Situations;

namespace Sightglass.Web.Room;

/// <summary>What the room keeps, and how it comes back from it.</summary>
public sealed partial class TrainingRoom
{
    /// <summary>Reads the record of a drill of the room.</summary>
    /// <returns>Null where it is not kept or cannot be read.</returns>
    public SessionRecord? RecordOf(RoomDrill drill)
    {
        ArgumentNullException.ThrowIfNull(drill);
        string? path = _folder is null ? null : Path.Combine(_folder, drill.Record);
        if (path is null || !File.Exists(path))
        {
            return null;
        }

        using FileStream file = new(path, FileMode.Open, FileAccess.Read, FileShare.ReadWrite);
        byte[] bytes = new byte[file.Length];
        file.ReadExactly(bytes);
        return SessionRecord.Read(bytes, out _);
    }

    /// <summary>Marks the present moment of a drill.</summary>
    public string? Bookmark(RoomDrill drill, string name)
    {
        ArgumentNullException.ThrowIfNull(drill);
        return Kept(drill, () => drill.Last is { } last ? new RoomEvent.Bookmarked(_clock.GetUtcNow(), drill.Number, last.Now.Ticks, Short(name)) : null);
    }

    /// <summary>Writes a line into somebody's notebook.</summary>
    public string? Note(Seat seat, string text)
    {
        ArgumentNullException.ThrowIfNull(seat);
        string plain = Short(text);
        return seat.Drill is { } drill && plain.Length > 0
            ? Kept(drill, () => new RoomEvent.Noted(_clock.GetUtcNow(), seat.Number, drill.Number, drill.Last?.Now.Ticks ?? 0, plain))
            : Say.It("there is nothing to write");
    }

    /// <summary>The assessor's word on an item to observe.</summary>
    public string? Observe(RoomDrill drill, string item, Verdict verdict) => Kept(drill, () => new RoomEvent.Observed(_clock.GetUtcNow(), drill.Number, item, verdict));

    /// <summary>An assessor's own word on a line of the sheet or an item to observe.</summary>
    public string? Mark(RoomDrill drill, string assessor, string line, Verdict verdict)
    {
        ArgumentNullException.ThrowIfNull(drill);
        string name = Short(assessor);
        return name.Length is 0 or > LongestName
            ? Say.It("Write your name first, so that it is known whose word it is.")
            : Kept(drill, () => new RoomEvent.Marked(_clock.GetUtcNow(), drill.Number, name, line, verdict));
    }

    /// <summary>Advice for whoever worked in a drill, kept apart from what counts.</summary>
    public string? Coach(RoomDrill drill, string text) => Short(text) is { Length: > 0 } plain ? Kept(drill, () => new RoomEvent.Coached(_clock.GetUtcNow(), drill.Number, plain)) : Say.It("there is nothing to write");

    /// <summary>Goes back to a moment of a drill: another one begins that repeats what was done until then, held, with the same people. The first keeps its record.</summary>
    public string? GoBack(RoomDrill drill, SimTime at)
    {
        ArgumentNullException.ThrowIfNull(drill);
        if (drill.Drill is not { } bound || RecordOf(drill) is not { } record)
        {
            return Say.It("Its record cannot be read.");
        }

        return Began(bound, record.Header.BookHash, record.Header.Start, [.. drill.Seats.OrderBy(s => s.Person != bound.Person).ThenBy(s => s.Person)], drill.IsAlone, record.Until(Math.Clamp(at.Ticks, 0, record.End)), drill);
    }

    private static string Short(string text)
    {
        string plain = new([.. text.Trim().Where(c => !char.IsControl(c))]);
        return plain.Length <= LongestText ? plain : plain[..LongestText];
    }

    private string? Kept(RoomDrill drill, Func<RoomEvent?> line)
    {
        string? trouble;
        lock (_gate)
        {
            trouble = line() is { } kept ? Told(kept) : Say.It("that cannot be done");
        }

        TellAll(drill);
        Changed?.Invoke();
        return trouble;
    }

    private string? EndNow(RoomDrill drill)
    {
        if (drill.Ended is not null)
        {
            return null;
        }

        if (Told(new RoomEvent.Ended(_clock.GetUtcNow(), drill.Number)) is { } trouble)
        {
            return trouble;
        }

        if (drill.Session is { } session)
        {
            _living = _living.Remove(drill);
            session.Close();
            (drill.Look, drill.Session) = (session.Current, null);
            session.Dispose();
        }

        return null;
    }

    /// <summary>Writes down what holds from now on, and lets it hold.</summary>
    private string? Told(RoomEvent line)
    {
        try
        {
            _log?.Append(line);
        }
        catch (IOException e)
        {
            return Say.With($"It could not be written down, so it was not done: {e.Message}");
        }

        Take(line);
        return null;
    }

    /// <summary>Lets a line hold.</summary>
    private void Take(RoomEvent line)
    {
        switch (line)
        {
            case RoomEvent.Joined j:
                _seats[j.Seat] = new(j.Seat, j.Name, j.KeyHash);
                _nextSeat = j.Seat + 1;
                break;
            case RoomEvent.Left l:
                if (_seats.Remove(l.Seat, out Seat? gone))
                {
                    Sit(gone, null);
                }

                break;
            case RoomEvent.Began b:
                _drills[b.Number] = new(b.Number, b.Record, b.Start, b.IsAlone, b.From, b.On);
                break;
            case RoomEvent.Seated s when _seats.TryGetValue(s.Seat, out Seat? seat) && _drills.TryGetValue(s.Number, out RoomDrill? drill):
                // Who goes back keeps what they wrote until then.
                long until = drill.From is { } from && seat.Drill?.Number == from && RecordOf(drill) is { } record ? record.Header.From?.At ?? 0 : -1;
                drill.Worked = drill.Worked.SetItem(s.Person, seat.Name);
                (seat.Person, seat.Notes) = (s.Person, [.. seat.Notes.Where(n => n.At.Ticks <= until)]);
                Sit(seat, drill);
                drill.Workers = [.. drill.Workers.Where(w => w.Seat != s.Seat), new(s.Seat, seat.Name, s.Person)];
                break;
            case RoomEvent.Freed f when _seats.TryGetValue(f.Seat, out Seat? seat):
                seat.Notes = [];
                Sit(seat, null);
                break;
            case RoomEvent.Ended e when _drills.TryGetValue(e.Number, out RoomDrill? drill):
                drill.Ended = e.On;
                break;
            case RoomEvent.Bookmarked b when _drills.TryGetValue(b.Number, out RoomDrill? drill):
                drill.Bookmarks = drill.Bookmarks.Add((new(b.At), b.Name));
                break;
            case RoomEvent.Noted n when _seats.TryGetValue(n.Seat, out Seat? seat):
                seat.Notes = seat.Notes.Add((new(n.At), n.Text));
                break;
            case RoomEvent.Observed o when _drills.TryGetValue(o.Number, out RoomDrill? drill):
                drill.Observed = drill.Observed.SetItem(o.Item, o.Verdict);
                break;
            case RoomEvent.Coached c when _drills.TryGetValue(c.Number, out RoomDrill? drill):
                drill.Coached = drill.Coached.Add(c.Text);
                break;
            case RoomEvent.Marked m when _drills.TryGetValue(m.Number, out RoomDrill? drill):
                ImmutableSortedDictionary<string, Verdict> own = drill.Marks.GetValueOrDefault(m.Assessor) ?? ImmutableSortedDictionary<string, Verdict>.Empty;
                drill.Marks = drill.Marks.SetItem(m.Assessor, own.SetItem(m.Line, m.Verdict));
                break;
        }
    }

    private static void Sit(Seat seat, RoomDrill? drill)
    {
        if (seat.Drill is { } left)
        {
            (left.Seats, left.MayChange) = (left.Seats.Remove(seat), true);
        }

        seat.Drill = drill;
        if (drill is not null)
        {
            (drill.Seats, drill.MayChange) = (drill.Seats.Add(seat), true);
        }
    }

    /// <summary>Takes up again what was under way when the program ended, held. What is by another book stays closed, with its record.</summary>
    private void Revive()
    {
        ServedBook book = _shelf.Now;
        foreach (RoomDrill drill in _drills.Values.Where(d => d.Start.Drill is { } name && book.Book.Drills.ContainsKey(name)))
        {
            DiagnosticList found = [];
            if (RecordOf(drill) is not { } whole || whole.Header.BookHash != book.Hash || book.Bind(book.Book.Drills[drill.Start.Drill!], new CaseDraws(drill.Start.Seed, drill.Start.Case), found) is not { } bound)
            {
                continue;
            }

            drill.Drill = bound;
            if (drill.Ended is not null || whole.Hash is not null || RecordFile.Open(Path.Combine(_folder!, drill.Record), out SessionRecord? record) is not { } file)
            {
                continue;
            }

            if (DrillSession.Restore(bound, record!, _clock, file, found, MetreOf(drill.Number)) is not { } session)
            {
                file.Dispose();
                continue;
            }

            session.Hold(drill.IsAlone ? HoldReason.Alone | HoldReason.Lost : HoldReason.All | HoldReason.Lost);
            if (record!.End > 0)
            {
                session.Release(HoldReason.Brief);
            }

            IsHeld |= !drill.IsAlone;
            drill.Session = session;
            session.Changed += () => TellAll(drill);
            _living = _living.Add(drill);
        }
    }
}
