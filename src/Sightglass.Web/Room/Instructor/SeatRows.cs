using System.Collections.Immutable;
using Sightglass.Basics.Language;
using Sightglass.Basics.Time;
using Sightglass.World.Journal;

namespace Sightglass.Web.Room.Instructor;

/// <summary>Says of everybody in the room what the instructor has to see at a glance.</summary>
public static class SeatRows
{
    /// <summary>Who works in a drill that is under way, and who waits, each by their numbers.</summary>
    /// <param name="seats">Everybody.</param>
    /// <param name="now">On the wall.</param>
    public static (ImmutableArray<SeatRow> Working, ImmutableArray<Seat> Waiting) Of(IReadOnlyCollection<Seat> seats, DateTimeOffset now) =>
        ([.. seats.Where(IsWorking).Select(s => Of(s, s.Drill!, now))], [.. seats.Where(s => !IsWorking(s))]);

    /// <summary>Whether a drill is under way for somebody.</summary>
    public static bool IsWorking(Seat seat)
    {
        ArgumentNullException.ThrowIfNull(seat);
        return seat.Drill is { Ended: null, Session: not null };
    }

    private static SeatRow Of(Seat seat, RoomDrill drill, DateTimeOffset now)
    {
        if (drill.Session is not { } session)
        {
            return SeatRow.Waiting(seat); // it ended between two looks
        }

        DrillLook look = session.Current;
        ImmutableArray<FallLine> lines = Falling.Of(session.Drill, look, session.Progress);
        PersonLook? person = seat.Person < look.People.Length ? look.People[seat.Person] : null;
        return new(
            seat, drill, ClockOf(look.Now), Doing(seat, person, look, now), Flag(session, look), lines.FirstOrDefault(l => l.Mark == FallMark.Broken)?.What ?? "",
            [.. lines.Where(l => l.IsAtAGlance)], person is null ? null : person.Place ?? person.From);
    }

    /// <summary>What somebody is at, or did last.</summary>
    public static string Doing(Seat seat, PersonLook? person, DrillLook look, DateTimeOffset now)
    {
        ArgumentNullException.ThrowIfNull(seat);
        ArgumentNullException.ThrowIfNull(look);
        if (!seat.IsThere)
        {
            return seat.LostAt is { } lost ? Say.With($"connection lost {Math.Max(0, (int)(now - lost).TotalSeconds)} s ago") : Say.It("their page is not open");
        }

        if (person is null)
        {
            return "";
        }

        if (person.Towards is { } towards)
        {
            double left = person.Until is { } until ? Math.Ceiling((until - look.Now).Seconds) : 0;
            return left > 0 ? Say.With($"walks to {towards}, {left:0} s to go") : Say.With($"walks to {towards}");
        }

        return person.Deed is { } deed ? DeedWords.Of(deed)
            : LastOf(person, look) is { } last && last.Sentence.Format != LaneView.Walks ? last.Text
            : Say.With($"stands at {person.Place ?? person.From}");
    }

    /// <summary>A moment of a drill.</summary>
    public static string ClockOf(SimTime at) => new ClockWords(at).ToString();

    /// <summary>The last line of the journal that begins with their role.</summary>
    private static JournalEntry? LastOf(PersonLook person, DrillLook look) => look.Journal.LastOrDefault(j =>
        j.Kind is JournalKind.Deed or JournalKind.Said or JournalKind.Finding && j.Sentence.ArgumentCount > 0 && j.Sentence.GetArgument(0) is string who && who == person.Role);

    private static string Flag(DrillSession session, DrillLook look) =>
        look.Trouble is not null ? Say.It("cannot be computed further")
        : session.Held.HasFlag(HoldReason.Stop) ? Say.It("calls to stop")
        : look.IsOver ? Say.It("is over")
        : session.Held.HasFlag(HoldReason.Brief) ? Say.It("has not begun")
        : session.Held.HasFlag(HoldReason.Lost) ? Say.With($"held since {ClockOf(look.Now)}")
        : look.IsTakenOver ? Say.It("taken over")
        : session.Held.HasFlag(HoldReason.One) ? Say.It("held")
        : session.Held.HasFlag(HoldReason.Alone) ? Say.It("holds the clock")
        : "";
}
