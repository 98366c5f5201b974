namespace Sightglass.Cards.Sentences;

/// <summary>What comes back from somebody who was asked to do something.</summary>
public enum Reply
{
    /// <summary>Nothing, in the time allowed.</summary>
    None,

    /// <summary>Yes: it is done.</summary>
    Done,

    /// <summary>No: the role may not operate the control.</summary>
    MayNot,

    /// <summary>No: another's permission is needed, and was not given.</summary>
    NotPermitted,

    /// <summary>No: the control is locked and tagged.</summary>
    Locked,

    /// <summary>No: a hazard would injure whoever does it.</summary>
    Unsafe,

    /// <summary>No: there is no way to the control for that person.</summary>
    NoWay,

    /// <summary>No: the control was operated and did not move.</summary>
    Stuck,
}
