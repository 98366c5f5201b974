using System.Globalization;
using Sightglass.Basics.Language;
using Sightglass.Book;
using Sightglass.Book.Model;
using Sightglass.Cli.Output;
using Sightglass.Paper.Document;
using Sightglass.Paper.Papers;
using Sightglass.Trials.Tries;

namespace Sightglass.Cli.Tries;

/// <summary>A card that was just tried, as a pocket card with the stamp of its trial.</summary>
internal static class TriedCard
{
    /// <summary>What keeps a card from being approved: null where nothing does.</summary>
    public static string? Hindrance(IReadOnlyList<TryResult> results) =>
        results.Any(r => r.Trial.StoppedEarly) ? "its trial was stopped early"
        : results.Sum(r => r.Trial.Failed + r.Trial.Undecided) is > 0 and var bad ? string.Create(CultureInfo.InvariantCulture, $"it fails in {bad} cases")
        : results.All(r => r.Trial.Applicable == 0) ? "no case called for it"
        : null;

    /// <param name="results">Of one card, at least one; a card that is hindered is a draft whoever approves.</param>
    /// <param name="folder">Of the book.</param>
    /// <param name="approvedBy">Who stands for it, or null.</param>
    /// <param name="day">On which it is printed.</param>
    /// <param name="address">Where its page is found; null for none.</param>
    public static PaperDocument Of(IReadOnlyList<TryResult> results, string folder, string? approvedBy, DateOnly day, string? address = null)
    {
        ClassBook book = results[0].Trial.Setup.Book;
        CardStamp stamp = new(
            [.. results.Select(r => TriedWords.Of(r.Trial))],
            Say.With($"{book.Title}, edition {book.Edition}, book {BookHash.Of(folder)}, seed {results[0].Trial.Seed}, {BuildName.Text}."),
            day,
            Hindrance(results) is null ? approvedBy : null);
        return CardPaper.Of(results[0].Request.Card, stamp, book, address);
    }
}
