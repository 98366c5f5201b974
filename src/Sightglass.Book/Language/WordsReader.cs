using System.Collections.Immutable;
using Sightglass.Basics.Diagnostics;
using Sightglass.Basics.Language;
using Sightglass.Book.Assemblies;
using Sightglass.Book.Kinds;
using Sightglass.Book.Model;
using Sightglass.Book.Readers;
using Sightglass.Book.Yaml;

namespace Sightglass.Book.Language;

/// <summary>
/// Reads what a book says in other languages: <c>words/es.yaml</c> with its texts, <c>words/es/*.card</c> with its cards. Reports T001…T008 and the codes of any
/// file of a book; hostile input is refused within the same limits and never throws.
/// </summary>
public static class WordsReader
{
    /// <summary>Where translations stand below a book's folder.</summary>
    public const string Folder = "words";

    /// <summary>The book with all its languages.</summary>
    /// <param name="book">As read.</param>
    /// <param name="folder">Its folder.</param>
    /// <param name="found">Takes findings; a language with an error is left out.</param>
    public static ClassBook Into(ClassBook book, string folder, DiagnosticList found)
    {
        ArgumentNullException.ThrowIfNull(book);
        ArgumentNullException.ThrowIfNull(folder);
        ArgumentNullException.ThrowIfNull(found);
        if (!Directory.Exists(Path.Combine(folder, Folder)))
        {
            return book;
        }

        Findings findings = new(found, YamlLimits.Default);
        BookFolder files = new(Path.Combine(folder, Folder), YamlLimits.Default, findings, Folder + "/");
        files.Read();
        var languages = ImmutableSortedDictionary.CreateBuilder<string, BookWords>(StringComparer.Ordinal);
        foreach (SourceText file in files.Yaml)
        {
            DiagnosticList own = [];
            string code = Path.GetFileNameWithoutExtension(file.Path);
            string cards = $"{Folder}/{code}/";
            if (Read(book, file, [.. files.Cards.Where(c => c.Path.StartsWith(cards, StringComparison.Ordinal))], own) is { } words && !own.HasErrors)
            {
                languages[code] = words;
            }

            found.AddRange(own);
        }

        return book with { Languages = languages.ToImmutable() };
    }

    /// <summary>Reads one language.</summary>
    public static BookWords? Read(ClassBook book, SourceText file, IReadOnlyList<SourceText> cards, DiagnosticList found)
    {
        ArgumentNullException.ThrowIfNull(book);
        ArgumentNullException.ThrowIfNull(file);
        ArgumentNullException.ThrowIfNull(cards);
        ArgumentNullException.ThrowIfNull(found);
        string code = Path.GetFileNameWithoutExtension(file.Path);
        Findings findings = new(found, YamlLimits.Default);
        if (Tongue.Find(code) is not { } program || program == Tongue.English)
        {
            findings.Add(WordsMessages.UnknownLanguage(file.Between(0, 0), code, Tongue.All.Where(t => t != Tongue.English).Select(t => t.Code)));
            return null;
        }

        List<BookWord> words = Words(file, findings);
        HashSet<string> known = [.. book.CardNames];
        foreach (SourceText card in cards.Where(c => !known.Contains(Path.GetFileNameWithoutExtension(c.Path))))
        {
            findings.Add(WordsMessages.NoCard(card.Between(0, 0), Path.GetFileNameWithoutExtension(card.Path)));
        }

        BookWords all = new(program, words, cards);
        CheckNames(book, all, findings);
        return all;
    }

    /// <summary>What of the book is not said in a language, and what is said that the book does not have: T003, T004.</summary>
    public static void CheckWhole(ClassBook book, BookWords words, DiagnosticList found)
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

    /// <summary>The texts of a book that a language lacks.</summary>
    /// <param name="book">The book.</param>
    /// <param name="words">The language; null where the book says nothing in it.</param>
    public static IEnumerable<ReadText> Missing(ClassBook book, BookWords? words) => BookTexts.Of(book).Concat(words is null ? [] : BookTexts.OfTrains(book)).Where(t => words?.Find(t.Text) is null).DistinctBy(t => t.Text);

    private static void CheckNames(ClassBook book, BookWords words, Findings found)
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

    private static IEnumerable<(string Sort, string Name)> NamesOf(ClassBook book) =>
        book.Items.Keys.Select(n => ("item", n))
            .Concat(book.Places.Keys.Select(n => ("place", n)))
            .Concat(book.Facts.Keys.Select(n => ("fact", n)))
            .Concat(book.Signs.Keys.Select(n => ("sign", n)))
            .Concat(book.Roles.Keys.Select(n => ("role", n)))
            .Concat(book.Protections.Keys.Select(n => ("protection", n)))
            .Concat(book.Situations.Keys.Select(n => ("situation", n)));

    private static List<BookWord> Words(SourceText file, Findings found)
    {
        ReadContext context = new(found, new KindCatalog([]));
        Dictionary<string, BookWord> words = new(StringComparer.Ordinal);
        foreach (YamlNode document in new YamlFile(new YamlBudget(found.Limits), found).Read(file))
        {
            if (MapReader.Of(document, document.Span, "the file of a language", context) is not { } map)
            {
                continue;
            }

            YamlNode? texts = map.Required("texts", "[ { text: …, says: … } ]") ? map.Take("texts") : null;
            map.Finish();
            foreach (BookWord word in texts is YamlList list ? list.Items.Select(n => Word(n, context)).OfType<BookWord>() : Wrong(texts, context))
            {
                if (!words.TryAdd(word.Text, word))
                {
                    found.Add(WordsMessages.SaidTwice(word, words[word.Text]));
                }
            }
        }

        return [.. words.Values];
    }

    private static BookWord[] Wrong(YamlNode? node, ReadContext context)
    {
        if (node is not null and not YamlScalar { IsNull: true })
        {
            context.Add(Messages.BookMessages.WrongShape(node.Span, "`texts`", "a list", node.Described));
        }

        return [];
    }

    private static BookWord? Word(YamlNode node, ReadContext context)
    {
        if (MapReader.Of(node, node.Span, "the text", context) is not { } map)
        {
            return null;
        }

        bool whole = map.Required("text", "as the book has it") & map.Required("says", "in the other language");
        if (map.Take("says") is YamlScalar { Value.Length: 0 })
        {
            map.Take("text");
            map.Finish();
            return null; // waits to be translated: told as missing
        }

        BookWord word = new(map.Text("text"), map.Text("says"), node.Span);
        map.Finish();
        if (!whole || word.Text.Length == 0 || word.Says.Length == 0)
        {
            return null;
        }

        if (!Holes.In(word.Text).ToHashSet().SetEquals(Holes.In(word.Says)))
        {
            context.Add(WordsMessages.OtherHoles(word));
            return null;
        }

        return word;
    }
}
