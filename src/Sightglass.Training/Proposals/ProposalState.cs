namespace Sightglass.Training.Proposals;

public enum ProposalState
{
    Open,
    Accepted,
    Refused,
}
