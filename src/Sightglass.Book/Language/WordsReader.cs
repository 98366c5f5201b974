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

        BookWords all = new(program, words, cards, CardTitles.Of(book, cards));
        WordsCheck.Names(book, all, findings);
        return all;
    }

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
