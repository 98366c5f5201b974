using System.Globalization;
using Sightglass.Book;
using Sightglass.Book.Model;
using Sightglass.Cards.Tree;
using Sightglass.Cli.Output;
using Sightglass.Cli.Tries;
using Sightglass.Drawing.Look;
using Sightglass.Paper;

namespace Sightglass.Cli.Reports;

/// <summary>A card that was just tried, as a page of pocket leaves that stands alone.</summary>
internal static class PocketPage
{
    private const string OwnStyle = "@page{size:105mm 148mm;margin:7mm}";

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
    public static string Write(IReadOnlyList<TryResult> results, string folder, string? approvedBy, DateOnly day)
    {
        Card card = results[0].Request.Card;
        ClassBook book = results[0].Trial.Setup.Book;
        PocketStamp stamp = new(
            [.. results.Select(r => $"{r.Trial.Setup.Situation.Name}: {TrialWords.Counts(r.Trial)}")],
            $"{book.Title}, edition {book.Edition}, book {BookHash.Of(folder)}, seed {results[0].Trial.Seed}, {BuildName.Text}.",
            day,
            Hindrance(results) is null ? approvedBy : null);
        return $"<!DOCTYPE html><html lang=\"en\"><head><meta charset=\"utf-8\"><meta name=\"viewport\" content=\"width=device-width,initial-scale=1\"><title>{Html.Text(card.Title)}</title>"
            + $"<style>{LookStyle.ReportCss}{PocketPaper.Css}{OwnStyle}</style></head><body><main>{PocketPaper.Write(card, stamp, book.Notice)}</main></body></html>";
    }
}
