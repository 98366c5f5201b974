using Sightglass.Basics.Diagnostics;
using Sightglass.Book.Model;

namespace Sightglass.Training.Defects;

/// <summary>What a defect needs so that the next person can rely on the list: a machine, words, somebody who saw it, days in order.</summary>
public static class DefectRules
{
    public const int LongestText = 2000;

    /// <summary>Why it cannot be written down, or null.</summary>
    /// <param name="book">Whose machines and items.</param>
    /// <param name="defect">As it would be kept.</param>
    /// <param name="today">No defect is found tomorrow.</param>
    public static string? WhyNot(ClassBook book, Defect defect, DateOnly today)
    {
        ArgumentNullException.ThrowIfNull(book);
        ArgumentNullException.ThrowIfNull(defect);
        return defect.Text.Length == 0 ? "Write what does not work, as it was found."
            : defect.Text.Length + defect.Restriction.Length > LongestText ? $"This is more than the {LongestText} letters that are kept. Put the rest where your railroad keeps it."
            : !book.RoadNumbers.IsEmpty && !book.RoadNumbers.ContainsKey(defect.RoadNumber) ? $"The book has no road number {defect.RoadNumber}. It has {string.Join(", ", book.RoadNumbers.Keys)}."
            : defect.Item is { } item && !(book.RoadNumbers.IsEmpty ? book : book.For(defect.RoadNumber)).Items.ContainsKey(item) ? $"{defect.RoadNumber} has no item “{item}”. {Hint(item, book)}"
            : defect.FoundBy.Length == 0 ? "Say who found it."
            : defect.FoundOn > today ? "It cannot have been found after today."
            : null;
    }

    /// <summary>Why it cannot be told to be mended, or null.</summary>
    public static string? WhyNotMended(Defect defect, string by, DateOnly on, DateOnly today)
    {
        ArgumentNullException.ThrowIfNull(defect);
        return defect.MendedOn is not null ? $"{defect.MendedBy} told it to be mended meanwhile."
            : string.IsNullOrWhiteSpace(by) ? "Say who mended it."
            : on > today || on < defect.FoundOn ? $"It was mended between the day it was found, {defect.FoundOn:yyyy-MM-dd}, and today."
            : null;
    }

    private static string Hint(string item, ClassBook book) => Nearest.DidYouMean(item, book.Items.Keys) is { } hint
        ? char.ToUpperInvariant(hint[0]) + hint[1..].Replace('`', '"')
        : "Choose one of the list, or leave it empty.";
}
