namespace Sightglass.Web.Bets;

/// <summary>How far a round of a bet has come.</summary>
public enum BetPhase
{
    /// <summary>People say what they think.</summary>
    Asking,

    /// <summary>It is shown happening; nobody changes an answer any more.</summary>
    Running,

    /// <summary>It has happened.</summary>
    Told,
}
