namespace Sightglass.Training.Drills;

/// <summary>Sorts of line in what a drill notes.</summary>
public enum DrillNoteKind
{
    /// <summary>The cue came.</summary>
    Cue,

    /// <summary>The trainee was where the cue could be known.</summary>
    Known,

    /// <summary>An objective came true, by its number.</summary>
    Reached,

    /// <summary>An objective came untrue again.</summary>
    Lost,

    /// <summary>A must-never came true.</summary>
    Never,

    /// <summary>What must be first came true.</summary>
    First,

    /// <summary>What must come after it came true.</summary>
    Then,

    /// <summary>Something happened on the way.</summary>
    Event,

    /// <summary>A person did what they may not, by the number of <see cref="Sightglass.World.People.Breach"/>.</summary>
    Breach,

    /// <summary>A danger injured a person.</summary>
    Injured,

    /// <summary>The trainee put a hand to a control.</summary>
    Touched,

    /// <summary>The trainee told somebody something.</summary>
    Told,

    /// <summary>The trainee reported what is so, by its number.</summary>
    ReportedRight,

    /// <summary>The trainee reported what is not so, by its number.</summary>
    ReportedWrong,

    /// <summary>The trainee took a hint, by its number.</summary>
    Hint,

    /// <summary>The trainee said that they were done.</summary>
    Declared,

    /// <summary>The time was over.</summary>
    TimeOver,

    /// <summary>The trainee called that everything is to stop at once.</summary>
    Stopped,

    /// <summary>The instructor began to act in the trainee's stead.</summary>
    TakenOver,

    /// <summary>The trainee acts for themselves again.</summary>
    HandedBack,

    /// <summary>The instructor put something in or took it out, by the item or the quantity.</summary>
    Interfered,
}
