using System.Globalization;
using Sightglass.Basics.Quantities;
using Sightglass.Basics.Time;
using Sightglass.Book.Model;
using Sightglass.Training.Bets;

namespace Sightglass.Cli.Output;

/// <summary>Bets as text.</summary>
internal static class BetText
{
    private const int Rows = 8;

    public static void PrintAll(TextWriter output, ClassBook book, bool json)
    {
        Bet[] bets = [.. book.Bets.Values.OrderBy(b => b.Span)];
        if (json)
        {
            Answer.Write(output, new BetListAnswer(book.Title, book.Notice, [.. bets.Select(b => new BetListAnswer.Row(b.Name, b.Asks, b.Situation, b.RunsFor, [.. b.Answers.Select(a => a.Says)]))]));
            return;
        }

        BookList.Print(output, book, bets, "bet", "Describe them under `bets:`.", b => [b.Name, b.Asks]);
    }

    public static void Print(TextWriter output, BoundBet bet, BetResult result)
    {
        WalkText.Wrap(output, "", bet.Plan.Book.Notice);
        output.WriteLine();
        WalkText.Wrap(output, "", bet.Bet.Asks);
        output.WriteLine();
        for (int i = 0; i < bet.Bet.Answers.Length; i++)
        {
            WalkText.Wrap(output, $" {(i == result.CameTrue ? '>' : ' ')} {(char)('A' + i)}  ", bet.Bet.Answers[i].Says);
        }

        output.WriteLine();
        WalkText.Wrap(output, "", result.CameTrue >= 0 ? $"Run for {Time(bet.Bet.RunsFor)}: {(char)('A' + result.CameTrue)} came true." : $"Run for {Time(bet.Bet.RunsFor)}: no answer came true{(result.Trouble is { } trouble ? $", {trouble}" : "")}.");
        WalkText.Wrap(output, "", bet.Bet.Because);
        WalkText.Wrap(output, "", bet.Bet.Lesson);
        output.WriteLine();
        Table(output, bet, result);
        foreach ((Sightglass.World.Journal.JournalEntry entry, int times) in BetStory.Of(result.Journal))
        {
            output.WriteLine(times == 1 ? StoryLine.Text(entry) : $"{StoryLine.Text(entry)} ({times} times in all)");
        }
    }

    private static void Table(TextWriter output, BoundBet bet, BetResult result)
    {
        if (bet.Shows.IsEmpty)
        {
            return;
        }

        for (int i = 0; i < bet.Shows.Length; i++)
        {
            output.WriteLine($"  ({i + 1}) {bet.Shows[i].Name}, {QuantityFormat.Symbol(bet.Shows[i].Unit)}");
        }

        for (int r = 0; r <= Rows; r++)
        {
            BetMoment moment = result.Moments[(result.Moments.Length - 1) * r / Rows];
            string values = string.Concat(moment.Values.Select((v, i) => $"{(Math.Abs(v) < 0.005 ? 0 : v).ToString(Math.Abs(v) < 10 ? "0.00" : "0", CultureInfo.InvariantCulture),12}"));
            output.WriteLine($"{Clock.Text(SimTime.FromSeconds(moment.Seconds)),9}{values}");
        }

        output.WriteLine();
    }

    private static string Time(double seconds) => QuantityFormat.Text(seconds, UnitTable.Get(seconds < 120 ? "s" : seconds < 7200 ? "min" : "h"));
}
