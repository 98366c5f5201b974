namespace Sightglass.Training.Bets;

/// <summary>One time that a group bet on what would happen. Nobody's name stands in it.</summary>
public sealed class BetRound
{
    public required Guid Id { get; init; }

    /// <summary>The book's title.</summary>
    public required string Book { get; init; }

    /// <summary>The bet's name in the book.</summary>
    public required string Bet { get; init; }

    public required DateTimeOffset At { get; init; }

    /// <summary>How many said each answer, in the book's order, separated by commas.</summary>
    public required string Counts { get; init; }

    /// <summary>Which came true when it was run, from 0.</summary>
    public required int CameTrue { get; init; }
}
