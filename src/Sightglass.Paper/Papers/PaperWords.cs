using System.Globalization;
using Sightglass.Basics.Language;
using Sightglass.Book.Model;
using Sightglass.Training.Lessons;

namespace Sightglass.Paper.Papers;

/// <summary>What several papers say in the same words.</summary>
public static class PaperWords
{
    /// <summary>The machine a paper is about: <c>Curlew 4104, edition 1</c>.</summary>
    public static string Machine(ClassBook book) => Machine(book, book.RoadNumberInUse);

    /// <summary>The same for a road number that is in use elsewhere: at the head of a page. None where empty.</summary>
    public static string Machine(ClassBook book, string? roadNumber)
    {
        ArgumentNullException.ThrowIfNull(book);
        return Say.With($"{(string.IsNullOrEmpty(roadNumber) ? Say.Book(book.Title) : $"{Say.Book(book.Title)} {roadNumber}")}, edition {book.Edition}");
    }

    /// <summary>The book's notice, and who decides where it does not say so itself.</summary>
    public static string Notice(ClassBook book) =>
        book.Notice.Contains("qualified people decide", StringComparison.OrdinalIgnoreCase) ? Say.Book(book.Notice) : $"{Say.Book(book.Notice)} {LessonWords.Decide}".Trim();

    public static string Day(DateOnly day) => day.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture);

    public static string Capital(string text) => text.Length == 0 ? text : char.ToUpperInvariant(text[0]) + text[1..];

    /// <summary>A name of the book in the language that is spoken, as a line begins.</summary>
    public static string Named(string name) => Capital(Say.Book(name));

    public static string Number(int number) => number.ToString(CultureInfo.InvariantCulture);
}
