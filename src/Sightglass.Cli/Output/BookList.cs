using Sightglass.Book.Model;

namespace Sightglass.Cli.Output;

/// <summary>Entries of a book that a verb lists when it is given none: how many there are, then each with its name and what is said of it.</summary>
internal static class BookList
{
    /// <param name="output">Gets the list.</param>
    /// <param name="book">That has them.</param>
    /// <param name="all">In the order in which they are listed.</param>
    /// <param name="one">What one is called.</param>
    /// <param name="none">What is said where there are none.</param>
    /// <param name="says">The name of one, and the paragraphs below it.</param>
    public static void Print<T>(TextWriter output, ClassBook book, IReadOnlyCollection<T> all, string one, string none, Func<T, string[]> says)
    {
        Head(output, book, all.Count, one, none);
        foreach (T entry in all)
        {
            string[] paragraphs = says(entry);
            output.WriteLine();
            WalkText.Wrap(output, "", paragraphs[0].ToUpperInvariant());
            Array.ForEach(paragraphs[1..], p => WalkText.Wrap(output, "   ", p));
        }
    }

    /// <summary>The line over a list.</summary>
    public static void Head(TextWriter output, ClassBook book, int count, string one, string none) =>
        output.WriteLine(count == 0 ? $"{book.Title}: no {one}s. {none}" : $"{book.Title}: {count} {one}{(count == 1 ? "" : "s")}");
}
