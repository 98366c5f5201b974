namespace Sightglass.Web.Room;

/// <summary>Why the clock of a drill stands; it goes when none of them holds it.</summary>
[Flags]
public enum HoldReason
{
    None = 0,

    /// <summary>Told what it is about, not begun yet.</summary>
    Brief = 1,

    /// <summary>The instructor holds this one.</summary>
    One = 2,

    /// <summary>The instructor holds everybody.</summary>
    All = 4,

    /// <summary>The stop word was said.</summary>
    Stop = 8,

    /// <summary>A trainee's page is gone: the lid is closed, the network is away.</summary>
    Lost = 16,

    /// <summary>Whoever practises alone holds it.</summary>
    Alone = 32,
}
