namespace Sightglass.Cli.Output;

/// <summary>What <c>bet --json</c> answers.</summary>
internal sealed record BetListAnswer(string Book, string Notice, IReadOnlyList<BetListAnswer.Row> Bets)
{
    internal sealed record Row(string Bet, string Asks, string Situation, double RunsForS, IReadOnlyList<string> Answers);
}
