namespace Sightglass.Training.Proposals;

/// <summary>Where a proposed change to the book came from.</summary>
public enum ProposalOrigin
{
    WalkDown,
    Question,
    Hand,
}
