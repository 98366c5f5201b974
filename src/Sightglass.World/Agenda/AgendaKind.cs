namespace Sightglass.World.Agenda;

/// <summary>Sorts of event; at the same moment they happen in this order.</summary>
public enum AgendaKind
{
    /// <summary>A fault of the situation begins.</summary>
    Fault,

    /// <summary>An action from outside: an instructor or a live trainee.</summary>
    Action,

    /// <summary>A person has finished what takes time: walking, turning, speaking, reacting.</summary>
    Person,

    /// <summary>A wait is over without what was waited for.</summary>
    Deadline,

    /// <summary>The time for which the result must stay so is over.</summary>
    Stay,

    /// <summary>Something is to be recorded.</summary>
    Sample,

    /// <summary>Somebody turns to what they were asked to do.</summary>
    Errand,

    /// <summary>Somebody on the way comes within a place where something injures, or leaves it.</summary>
    Pass,

    /// <summary>Whoever follows the world asked to be told.</summary>
    Overseer,
}
