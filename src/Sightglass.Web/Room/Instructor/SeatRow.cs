using System.Collections.Immutable;

namespace Sightglass.Web.Room.Instructor;

/// <summary>Somebody in the room as the instructor sees them at a glance.</summary>
/// <param name="Seat">Who.</param>
/// <param name="Drill">What they work in; null: they wait.</param>
/// <param name="Session">Of it, which the row was made from; null: they wait.</param>
/// <param name="Clock">Of the drill; empty while they wait.</param>
/// <param name="Doing">What they are at, or did last.</param>
/// <param name="Flag">What the instructor has to know of the drill itself: held, stopped, over; empty where it simply goes.</param>
/// <param name="Wrong">What went wrong, the first first; empty where nothing did.</param>
/// <param name="Marks">Of the evaluation, what is seen at a glance.</param>
/// <param name="Place">Where they stand, or left last; null while they wait.</param>
public sealed record SeatRow(Seat Seat, RoomDrill? Drill, DrillSession? Session, string Clock, string Doing, string Flag, string Wrong, ImmutableArray<FallLine> Marks, string? Place)
{
    public static SeatRow Waiting(Seat seat) => new(seat, null, null, "", "", "", "", [], null);
}
