using System.Collections.Immutable;
using Sightglass.Book.Model;

namespace Sightglass.World.Situations;

/// <summary>
/// Which of the class's machines a case is of: one of the road numbers that the situation names, or of all that the book has, each as likely.
/// Drawn by (seed, case) like everything else, beside the draws of the situation, which stay what they were.
/// </summary>
public static class RoadNumberDraw
{
    /// <summary>Its place in the order of draws: before all of a situation.</summary>
    public const int Order = -1;

    /// <summary>The numbers in the order of the author's files, so that renaming changes no draw; no words for a book without road numbers.</summary>
    public static DrawnRange RangeOf(ClassBook book, Situation situation)
    {
        ArgumentNullException.ThrowIfNull(book);
        ArgumentNullException.ThrowIfNull(situation);
        return RangeOf(situation.RoadNumbers.IsEmpty ? InOrder(book) : situation.RoadNumbers);
    }

    /// <summary>The draw from given numbers.</summary>
    public static DrawnRange RangeOf(ImmutableArray<string> numbers) => new(Order, "road number", 0, 0, null, numbers);

    /// <summary>The number of one case; null for a book without road numbers.</summary>
    public static string? Of(ClassBook book, Situation situation, ulong seed, ulong caseNumber)
    {
        DrawnRange range = RangeOf(book, situation);
        return range.Words.IsEmpty ? null : range.Say(new(seed, caseNumber));
    }

    private static ImmutableArray<string> InOrder(ClassBook book) => [.. book.RoadNumbers.Values.OrderBy(n => n.Span).Select(n => n.Number)];
}
