using System.Globalization;
using Sightglass.Book.Model;

namespace Sightglass.Cli.Output;

/// <summary>What <c>why</c> found, to read.</summary>
internal static class WhyText
{
    /// <summary>Causes named after a look at most.</summary>
    private const int Named = 4;

    /// <summary>Missed ones named at most.</summary>
    private const int MostMissed = 12;

    /// <summary>What a book looks into.</summary>
    public static void List(TextWriter output, ClassBook book)
    {
        output.WriteLine(book.Searches.IsEmpty ? "The book has no search: describe one under `searches`." : "Searches of the book:");
        foreach (Search search in book.Searches.Values.OrderBy(s => s.Span))
        {
            WalkText.Wrap(output, $"  {search.Name}: ", search.Text);
        }
    }

    public static void Print(TextWriter output, ClassBook book, WhyAnswer answer)
    {
        output.WriteLine(book.RoadNumberInUse is { } number ? $"{book.Title} {number}" : book.Title);
        WalkText.Wrap(output, "", book.Notice);
        output.WriteLine();
        WalkText.Wrap(output, "", $"{answer.PutWrong} things were put wrong one at a time in \"{answer.Situation}\". With {answer.CanBe} of them the fact \"{answer.Wanted}\" does not come to hold.");
        output.WriteLine();
        output.WriteLine("Likeliest now:");
        foreach (WhyAnswer.Share share in answer.Likeliest)
        {
            output.WriteLine($"  {Percent(share.Likely),5}  {share.Cause}");
        }

        output.WriteLine();
        output.WriteLine("Where to look, as long as everything is as usual:");
        for (int i = 0; i < answer.Looks.Length; i++)
        {
            WhyAnswer.Step step = answer.Looks[i];
            string way = step.WayM < 0.5 ? "" : string.Create(CultureInfo.InvariantCulture, $", {step.WayM:0} m on");
            WalkText.Wrap(output, $"{i + 1,3}. ", $"{step.Look}: {step.Usual}? ({step.Place}{way})");
            string more = step.Causes.Length > Named ? $"; or one of {step.Causes.Length - Named} more" : "";
            WalkText.Wrap(output, $"     {Percent(step.Likely),5}  ", $"if not: {string.Join("; ", step.Causes.Take(Named))}{more}");
        }

        WalkText.Wrap(output, "", "Local rules, the maker's manual and qualified people decide who looks where, and under which protection.");
        if (answer.Tried is { } tried)
        {
            output.WriteLine();
            string wrong = tried.AtOnce == 1 ? "one thing wrong" : $"{tried.AtOnce} things wrong";
            WalkText.Wrap(output, "", string.Create(CultureInfo.InvariantCulture, $"Tried: {tried.Cases} cases with {wrong}. All of it named first or second in {100.0 * tried.Found / tried.Cases:0.0} %, first {100.0 * tried.NamedFirst / (tried.Cases * tried.AtOnce):0.0} %; {tried.Looks:0.0} looks and {tried.WayM:0} m in a case."));
            foreach (string missed in tried.Missed.Take(MostMissed))
            {
                WalkText.Wrap(output, "  not found: ", missed);
            }

            if (tried.Missed.Length > MostMissed)
            {
                output.WriteLine($"  and {tried.Missed.Length - MostMissed} more");
            }
        }
    }

    private static string Percent(double share) => string.Create(CultureInfo.InvariantCulture, $"{100 * share:0} %");
}
