namespace Sightglass.Network.Springs;

/// <summary>How a body may move. What it may not do is held by something that carries no weight.</summary>
[Flags]
public enum Freedoms
{
    None = 0,

    /// <summary>Down.</summary>
    Heave = 1,

    /// <summary>Turning about the y axis: down where x is greater.</summary>
    Pitch = 2,

    /// <summary>Turning about the x axis: down where y is greater.</summary>
    Roll = 4,

    All = Heave | Pitch | Roll,
}
