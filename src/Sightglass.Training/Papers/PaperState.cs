namespace Sightglass.Training.Papers;

/// <summary>How far a card's edition has come.</summary>
public enum PaperState
{
    Draft,
    Reviewed,
    Approved,
    Withdrawn,
}
