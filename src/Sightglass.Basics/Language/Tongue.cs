using System.Collections.Frozen;
using System.Collections.Immutable;
using System.Reflection;
using System.Xml.Linq;

namespace Sightglass.Basics.Language;

/// <summary>
/// A language that the program speaks. English stands where it is said; every other language is a folder of resources in which the English text is the key.
/// What a language lacks is said in English.
/// </summary>
public sealed class Tongue
{
    private const string Folder = "Sightglass.Basics.Language.Words.";
    private static readonly AsyncLocal<Tongue?> s_spoken = new();
    private readonly Lazy<FrozenDictionary<string, string>> _words;
    private readonly Func<string, string?>? _book;

    private Tongue(string code, string name, Func<FrozenDictionary<string, string>> words) => (Code, Name, _words) = (code, name, new(words));

    private Tongue(Tongue program, Func<string, string?> book) => (Code, Name, _words, _book) = (program.Code, program.Name, program._words, book);

    public static Tongue English { get; } = new("en", "English", () => FrozenDictionary<string, string>.Empty);

    public static Tongue Spanish { get; } = new("es", "Español", () => WordsOf("es"));

    /// <summary>No language: English with every text between brackets, so that a text which cannot be translated is seen.</summary>
    public static Tongue Marked { get; } = new("qps", "⟦English⟧", () => FrozenDictionary<string, string>.Empty);

    /// <summary>Every language there is, the usual one first.</summary>
    public static ImmutableArray<Tongue> All { get; } = [English, Spanish];

    /// <summary>What is spoken where nobody asked for another; set once, when the program starts.</summary>
    public static Tongue Usual { get; set; } = English;

    /// <summary>What is spoken here and in all that is called from here.</summary>
    public static Tongue Spoken => s_spoken.Value ?? Usual;

    /// <summary>The code of open standards (BCP 47), such as <c>es</c>.</summary>
    public string Code { get; }

    /// <summary>Its name in itself.</summary>
    public string Name { get; }

    private bool IsMarked => Code == Marked.Code;

    /// <summary>The texts that it has, by the English ones.</summary>
    public IReadOnlyDictionary<string, string> Words => _words.Value;

    /// <summary>A language by its code, or null.</summary>
    public static Tongue? Find(string code) => All.FirstOrDefault(t => string.Equals(t.Code, code, StringComparison.OrdinalIgnoreCase));

    /// <summary>This language with that of a book.</summary>
    /// <param name="book">The book's own texts in this language; null for what it does not say.</param>
    public Tongue With(Func<string, string?> book) => new(this, book);

    /// <summary>Speaks this language until the answer is disposed, here and in what is called or started from here.</summary>
    public IDisposable Speak()
    {
        Before before = new(s_spoken.Value);
        s_spoken.Value = this;
        return before;
    }

    /// <summary>From now on this language is spoken here, and in what is called or started from here.</summary>
    public void SpeakHere() => s_spoken.Value = this;

    /// <summary>A text of the program in this language, or itself.</summary>
    public string Of(string text)
    {
        ArgumentNullException.ThrowIfNull(text);
        return ReferenceEquals(this, English) ? text : IsMarked ? $"⟦{text}⟧" : Words.GetValueOrDefault(text, text);
    }

    /// <summary>A word of a closed set (a position, a word of a scale) in this language, or itself.</summary>
    public string Word(string word) => WaysOf(word)[0];

    /// <summary>All ways in which this language says such a word, the usual one first: it may have to agree with the noun. In the resources they stand with <c>|</c> between them.</summary>
    public ImmutableArray<string> WaysOf(string word)
    {
        ArgumentNullException.ThrowIfNull(word);
        if (ReferenceEquals(this, English))
        {
            return [word];
        }

        if (ReferenceEquals(this, Marked))
        {
            return [Of(word)];
        }

        string own = OfBook(word);
        if (IsMarked)
        {
            return [ReferenceEquals(own, word) ? Of(word) : own];
        }

        // What the book says comes first; what the program says agrees with more nouns, and is read as well.
        string key = "word|" + word, said = Of(key);
        string[] ways = [.. ReferenceEquals(own, word) ? [] : own.Split('|'), .. said == key ? [] : said.Split('|')];
        return ways.Length == 0 ? [word] : [.. ways.Distinct(StringComparer.Ordinal)];
    }

    /// <summary>A text of the book in this language, or itself.</summary>
    public string OfBook(string text) => _book?.Invoke(text) ?? text;

    private static FrozenDictionary<string, string> WordsOf(string code)
    {
        Assembly here = typeof(Tongue).Assembly;
        Dictionary<string, string> words = new(StringComparer.Ordinal);
        foreach (string name in here.GetManifestResourceNames().Where(n => n.StartsWith(Folder + code + '.', StringComparison.Ordinal)))
        {
            using Stream file = here.GetManifestResourceStream(name)!;
            foreach (XElement entry in XDocument.Load(file).Root!.Elements("data"))
            {
                words[entry.Attribute("name")!.Value] = entry.Element("value")!.Value;
            }
        }

        return words.ToFrozenDictionary(StringComparer.Ordinal);
    }

    private sealed class Before(Tongue? spoken) : IDisposable
    {
        public void Dispose() => s_spoken.Value = spoken;
    }
}
