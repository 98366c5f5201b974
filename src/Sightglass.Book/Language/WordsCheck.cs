using Sightglass.Basics.Diagnostics;
using Sightglass.Basics.Language;
using Sightglass.Book.Model;
using Sightglass.Book.Readers;
using Sightglass.Book.Yaml;

namespace Sightglass.Book.Language;

/// <summary>Holds what a book says in another language against the book: whether it is whole, and whether its names are names.</summary>
public static class WordsCheck
{
    /// <summary>What of the book is not said in a language, and what is said that the book does not have: T003, T004.</summary>
    public static void Whole(ClassBook book, BookWords words, DiagnosticList found)
    {
        ArgumentNullException.ThrowIfNull(words);
        ArgumentNullException.ThrowIfNull(found);
        HashSet<BookWord> used = new(ReferenceEqualityComparer.Instance);
        HashSet<string> holes = new(StringComparer.Ordinal);
        ReadText[] texts = [.. BookTexts.Of(book)];
        foreach (ReadText text in texts.Concat(BookTexts.OfTrains(book)))
        {
            if (words.EntryOf(text.Text) is { } entry)
            {
                used.Add(entry);
                holes.UnionWith(words.HolesOf(text.Text));
            }
        }

        foreach (ReadText text in Missing(book, words))
        {
            found.Add(WordsMessages.NotTranslated(text.Span, words.Tongue.Name, text.Text));
        }

        string[] all = [.. texts.Select(t => t.Text)];
        foreach (BookWord word in words.Words.Where(w => !used.Contains(w) && !holes.Contains(w.Text)))
        {
            found.Add(WordsMessages.NotInBook(word, word.Text.Length < 60 ? Nearest.Find(word.Text, all) : null));
        }
    }

    /// <summary>Tells that a book says nothing in a language.</summary>
    public static Diagnostic NoWords(Tongue language)
    {
        ArgumentNullException.ThrowIfNull(language);
        return WordsMessages.NoWords(language.Name, language.Code);
    }

    /// <summary>The texts of a book that a language lacks. Positions and words of a scale that the program itself says are none of them.</summary>
    /// <param name="book">The book.</param>
    /// <param name="words">The language; null where the book says nothing in it.</param>
    public static IEnumerable<ReadText> Missing(ClassBook book, BookWords? words) =>
        BookTexts.Of(book).Concat(words is null ? [] : BookTexts.OfTrains(book)).Where(t => words?.Find(t.Text) is null && !(t.Sort == BookTextSort.Word && IsSaid(t.Text, words))).DistinctBy(t => t.Text);

    /// <summary>Names of a language that cards could not say, or that two things would share.</summary>
    internal static void Names(ClassBook book, BookWords words, Findings found)
    {
        Dictionary<(string Sort, string Says), BookWord> names = [];
        foreach ((string sort, string name) in NamesOf(book))
        {
            if (words.Find(name) is not { } says)
            {
                continue;
            }

            BookWord word = words.EntryOf(name) is { } entry ? entry with { Text = name, Says = says } : new(name, says, default);
            if (NameRules.Why(says) is { } why)
            {
                found.Add(WordsMessages.BadName(word, why));
            }

            if (!names.TryAdd((sort, says.ToLowerInvariant()), word))
            {
                found.Add(WordsMessages.SameName(word, names[(sort, says.ToLowerInvariant())]));
            }
        }
    }

    private static bool IsSaid(string word, BookWords? words) => words is not null && words.Tongue.Word(word) != word;

    private static IEnumerable<(string Sort, string Name)> NamesOf(ClassBook book) =>
        book.Items.Keys.Select(n => ("item", n))
            .Concat(book.Places.Keys.Select(n => ("place", n)))
            .Concat(book.Facts.Keys.Select(n => ("fact", n)))
            .Concat(book.Signs.Keys.Select(n => ("sign", n)))
            .Concat(book.Roles.Keys.Select(n => ("role", n)))
            .Concat(book.Protections.Keys.Select(n => ("protection", n)))
            .Concat(book.Situations.Keys.Select(n => ("situation", n)));
}
