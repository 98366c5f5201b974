namespace Sightglass.Web.Room.Instructor;

/// <summary>How a line of an evaluation stands while the drill goes on.</summary>
public enum FallMark
{
    NotYet,
    UnderWay,
    Done,

    /// <summary>Forbidden and come about, or no longer to be had.</summary>
    Broken,

    /// <summary>Only told: a hint was taken.</summary>
    Told,
}
