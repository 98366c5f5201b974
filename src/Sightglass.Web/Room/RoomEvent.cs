using System.Text.Json.Serialization;
using Sightglass.World.Records;

namespace Sightglass.Web.Room;

/// <summary>One line of the room's log: who came, what was begun for whom, what was written down beside it. What happens in a drill stands in its own record.</summary>
[JsonDerivedType(typeof(Joined), "joined")]
[JsonDerivedType(typeof(Left), "left")]
[JsonDerivedType(typeof(Began), "began")]
[JsonDerivedType(typeof(Seated), "seated")]
[JsonDerivedType(typeof(Freed), "freed")]
[JsonDerivedType(typeof(Ended), "ended")]
[JsonDerivedType(typeof(Bookmarked), "bookmarked")]
[JsonDerivedType(typeof(Noted), "noted")]
[JsonDerivedType(typeof(Observed), "observed")]
[JsonDerivedType(typeof(Coached), "coached")]
[JsonDerivedType(typeof(Marked), "marked")]
public abstract record RoomEvent(DateTimeOffset On)
{
    /// <summary>Somebody came in.</summary>
    /// <param name="On">When.</param>
    /// <param name="Seat">Their number.</param>
    /// <param name="Name">As they wrote it.</param>
    /// <param name="KeyHash">SHA-256 of what their browser keeps, hexadecimal.</param>
    public sealed record Joined(DateTimeOffset On, int Seat, string Name, string KeyHash) : RoomEvent(On);

    /// <summary>Somebody left.</summary>
    public sealed record Left(DateTimeOffset On, int Seat) : RoomEvent(On);

    /// <summary>A drill was set up.</summary>
    /// <param name="On">When.</param>
    /// <param name="Number">Its number in the room.</param>
    /// <param name="Record">Name of its record's file.</param>
    /// <param name="Start">Which drill and case.</param>
    /// <param name="IsAlone">Whether whoever works it also has its clock.</param>
    /// <param name="From">The number of the drill that it goes on from, or null.</param>
    public sealed record Began(DateTimeOffset On, int Number, string Record, SessionStart Start, bool IsAlone, int? From) : RoomEvent(On);

    /// <summary>Somebody is one of the people of a drill.</summary>
    public sealed record Seated(DateTimeOffset On, int Seat, int Number, int Person) : RoomEvent(On);

    /// <summary>Somebody waits for another drill.</summary>
    public sealed record Freed(DateTimeOffset On, int Seat) : RoomEvent(On);

    /// <summary>A drill is done with.</summary>
    public sealed record Ended(DateTimeOffset On, int Number) : RoomEvent(On);

    /// <summary>A moment was marked, ticks since the start.</summary>
    public sealed record Bookmarked(DateTimeOffset On, int Number, long At, string Name) : RoomEvent(On);

    /// <summary>A line of somebody's notebook.</summary>
    public sealed record Noted(DateTimeOffset On, int Seat, int Number, long At, string Text) : RoomEvent(On);

    /// <summary>The assessor's word on an item to observe; the last one holds.</summary>
    public sealed record Observed(DateTimeOffset On, int Number, string Item, Verdict Verdict) : RoomEvent(On);

    /// <summary>Advice for somebody, kept apart from what counts.</summary>
    public sealed record Coached(DateTimeOffset On, int Number, string Text) : RoomEvent(On);

    /// <summary>An assessor's own word on a line of the sheet, or on an item to observe, given without seeing what others say; the last one holds.</summary>
    /// <param name="On">When.</param>
    /// <param name="Number">Of the drill.</param>
    /// <param name="Assessor">As they wrote their name.</param>
    /// <param name="Line">What it is about, as the sheet keeps it.</param>
    /// <param name="Verdict">What they saw.</param>
    public sealed record Marked(DateTimeOffset On, int Number, string Assessor, string Line, Verdict Verdict) : RoomEvent(On);
}
