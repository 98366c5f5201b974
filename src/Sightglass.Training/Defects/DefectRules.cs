using Sightglass.Basics.Diagnostics;
using Sightglass.Basics.Language;
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
        return defect.Text.Length == 0 ? Say.It("Write what does not work, as it was found.")
            : defect.Text.Length + defect.Restriction.Length > LongestText ? Say.With($"This is more than the {LongestText} letters that are kept. Put the rest where your railroad keeps it.")
            : !book.RoadNumbers.IsEmpty && !book.RoadNumbers.ContainsKey(defect.RoadNumber) ? Say.With($"The book has no road number {defect.RoadNumber}. It has {string.Join(", ", book.RoadNumbers.Keys)}.")
            : defect.Item is { } item && !(book.RoadNumbers.IsEmpty ? book : book.For(defect.RoadNumber)).Items.ContainsKey(item) ? Say.With($"{defect.RoadNumber} has no item “{item}”. {BookHint.Of(item, book)}")
            : defect.FoundBy.Length == 0 ? Say.It("Say who found it.")
            : defect.FoundOn > today ? Say.It("It cannot have been found after today.")
            : null;
    }

    /// <summary>Why it cannot be told to be mended, or null.</summary>
    public static string? WhyNotMended(Defect defect, string by, DateOnly on, DateOnly today)
    {
        ArgumentNullException.ThrowIfNull(defect);
        return defect.MendedOn is not null ? Say.With($"{defect.MendedBy} told it to be mended meanwhile.")
            : string.IsNullOrWhiteSpace(by) ? Say.It("Say who mended it.")
            : on > today || on < defect.FoundOn ? Say.With($"It was mended between the day it was found, {defect.FoundOn:yyyy-MM-dd}, and today.")
            : null;
    }
}
