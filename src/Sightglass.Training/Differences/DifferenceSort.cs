namespace Sightglass.Training.Differences;

/// <summary>How an item differs, the gravest first.</summary>
public enum DifferenceSort
{
    /// <summary>Operated otherwise: other positions, another usual one, somebody else may.</summary>
    WorksOtherwise,

    /// <summary>An indication that shows something else.</summary>
    ShowsOtherwise,

    New,

    Gone,

    /// <summary>Somewhere else.</summary>
    Moved,

    /// <summary>Lettered otherwise: another label.</summary>
    LabelledOtherwise,

    /// <summary>Built otherwise: its kind, a parameter, what it is joined to.</summary>
    BuiltOtherwise,
}
