using System.Collections.Immutable;
using Sightglass.Basics.Time;

namespace Sightglass.Web.Room;

/// <summary>Somebody in the room, with the drill that they work in.</summary>
public sealed class Seat
{
    internal Seat(int number, string name, string keyHash) => (Number, Name, KeyHash) = (number, name, keyHash);

    /// <summary>Raised, outside of any lock, when they were given something else to do.</summary>
    public event Action? Changed;

    /// <summary>From 1.</summary>
    public int Number { get; }

    /// <summary>As they wrote it.</summary>
    public string Name { get; }

    /// <summary>What they work in, or null.</summary>
    public RoomDrill? Drill { get; internal set; }

    /// <summary>Which of its people they are.</summary>
    public int Person { get; internal set; }

    /// <summary>Their notebook in this drill, oldest first.</summary>
    public ImmutableArray<(SimTime At, string Text)> Notes { get; internal set; } = [];

    /// <summary>Whether a page of theirs is open.</summary>
    public bool IsThere => Pages > 0;

    /// <summary>Since when none is.</summary>
    public DateTimeOffset? LostAt { get; internal set; }

    internal string KeyHash { get; }

    internal int Pages { get; set; }

    internal void Tell() => Changed?.Invoke();
}
