namespace Sightglass.World.Runs;

/// <summary>How the run of a card ended.</summary>
public enum OutcomeKind
{
    /// <summary>Not ended yet.</summary>
    Running,

    /// <summary>What the card is for is true and stayed so.</summary>
    Done,

    /// <summary>A safe end that is not done: help was called.</summary>
    Stopped,

    /// <summary>A must-never came true, an act was not allowed or not possible, or the result is not there.</summary>
    Failed,

    /// <summary>What the card is to be used for was never seen at its start.</summary>
    NotApplicable,

    /// <summary>The numbers could not decide it: named.</summary>
    Undecided,
}
