namespace Sightglass.Web.Room;

/// <summary>What an assessor saw of an item to observe.</summary>
public enum Verdict
{
    NotSeen,
    Go,
    NoGo,
}
