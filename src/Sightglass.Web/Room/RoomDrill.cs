using System.Collections.Immutable;
using Sightglass.Basics.Time;
using Sightglass.Training.Drills;
using Sightglass.World.Records;

namespace Sightglass.Web.Room;

/// <summary>A drill of the room: under way, or done with and kept in its record.</summary>
public sealed class RoomDrill
{
    internal RoomDrill(int number, string record, SessionStart start, bool isAlone, int? from, DateTimeOffset begun) =>
        (Number, Record, Start, IsAlone, From, Begun) = (number, record, start, isAlone, from, begun);

    /// <summary>From 1.</summary>
    public int Number { get; }

    /// <summary>Name of its record's file.</summary>
    public string Record { get; }

    /// <summary>Which drill and case.</summary>
    public SessionStart Start { get; }

    /// <summary>Whether whoever works it also has its clock.</summary>
    public bool IsAlone { get; }

    /// <summary>The number of the drill that it goes on from, or null.</summary>
    public int? From { get; }

    public DateTimeOffset Begun { get; }

    /// <summary>When it was done with; null while it is under way.</summary>
    public DateTimeOffset? Ended { get; internal set; }

    /// <summary>The living drill; null where it is done with since the program began, or the book has become another one.</summary>
    public DrillSession? Session { get; internal set; }

    /// <summary>The drill on its machine; null where the book has become another one.</summary>
    public BoundDrill? Drill { get; internal set; }

    /// <summary>What was seen last; null where nothing was since the program began.</summary>
    public DrillLook? Last => Session?.Current ?? Look;

    /// <summary>Who works, or has worked, in it; also who has left the room since.</summary>
    public ImmutableArray<Worker> Workers { get; internal set; } = [];

    /// <summary>Moments that were marked.</summary>
    public ImmutableArray<(SimTime At, string Name)> Bookmarks { get; internal set; } = [];

    /// <summary>The assessor's word on each item to observe.</summary>
    public ImmutableSortedDictionary<string, Verdict> Observed { get; internal set; } = ImmutableSortedDictionary<string, Verdict>.Empty;

    /// <summary>Advice, kept apart from what counts.</summary>
    public ImmutableArray<string> Coached { get; internal set; } = [];

    /// <summary>What assessors said of its lines, each for themselves: by their names, by line.</summary>
    public ImmutableSortedDictionary<string, ImmutableSortedDictionary<string, Verdict>> Marks { get; internal set; } = ImmutableSortedDictionary<string, ImmutableSortedDictionary<string, Verdict>>.Empty;

    /// <summary>Who worked in it, by the number of the person; they may be in another drill by now.</summary>
    public ImmutableSortedDictionary<int, string> Worked { get; internal set; } = ImmutableSortedDictionary<int, string>.Empty;

    internal DrillLook? Look { get; set; }

    /// <summary>Who works in it now.</summary>
    internal ImmutableArray<Seat> Seats { get; set; } = [];

    /// <summary>Whether somebody came or left since it was last seen who is there, or is away for a moment.</summary>
    internal volatile bool MayChange = true;

    /// <summary>1 while a beat works.</summary>
    internal int Beating;
}
