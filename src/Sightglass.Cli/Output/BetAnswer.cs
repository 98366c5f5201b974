using Sightglass.Basics.Quantities;
using Sightglass.Training.Bets;

namespace Sightglass.Cli.Output;

/// <summary>What <c>bet NAME --json</c> answers.</summary>
/// <param name="CameTrue">Which answer, from 0; −1 where none did.</param>
/// <param name="Hash">Of the trajectory.</param>
internal sealed record BetAnswer(
    string Book,
    string Notice,
    string Bet,
    string Asks,
    string Situation,
    IReadOnlyList<BetAnswer.Choice> Answers,
    int CameTrue,
    string Because,
    string Lesson,
    IReadOnlyList<BetAnswer.Series> Shows,
    IReadOnlyList<BetAnswer.Event> Story,
    string? Trouble,
    long Steps,
    string Hash,
    string Build)
{
    public static BetAnswer Of(BoundBet bet, BetResult result) => new(
        bet.Plan.Book.Title,
        bet.Plan.Book.Notice,
        bet.Bet.Name,
        bet.Bet.Asks,
        bet.Bet.Situation,
        [.. bet.Bet.Answers.Select((a, i) => new Choice(a.Says, result.Held[i], result.FirstHeld[i]))],
        result.CameTrue,
        bet.Bet.Because,
        bet.Bet.Lesson,
        [.. bet.Shows.Select((s, i) => new Series(s.Name, QuantityFormat.Symbol(s.Unit), [.. result.Moments.Select(m => m.Values[i])]))],
        [.. result.Journal.Select(j => new Event(j.Time.Seconds, j.Text))],
        result.Trouble,
        result.Steps,
        $"{result.Hash:x16}",
        BuildName.Text);

    /// <param name="Held">At the end.</param>
    /// <param name="FirstHeldS">When it was first seen to hold, or null.</param>
    internal sealed record Choice(string Says, bool Held, double? FirstHeldS);

    /// <param name="Values">At even distances from the start to the end.</param>
    internal sealed record Series(string Name, string Unit, IReadOnlyList<double> Values);

    internal sealed record Event(double AtS, string Text);
}
