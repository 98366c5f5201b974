using System.Collections.Concurrent;
using System.Collections.Frozen;
using System.Collections.Immutable;
using Sightglass.Basics.Diagnostics;
using Sightglass.Basics.Language;
using Sightglass.Book.Model;
using Sightglass.Cards.Programs;
using Sightglass.Cards.Sentences;
using Sightglass.Cards.Tree;

namespace Sightglass.Cards.Names;

/// <summary>The names of a book as cards in one language say them. Made once for a book and a language; immutable.</summary>
public sealed class CardNames
{
    private readonly Tongue _tongue;
    private readonly NamePhraseReader _reader;
    private readonly NameIndex<Item> _items;
    private readonly NameIndex<Place> _places;
    private readonly NameIndex<Sign> _signs;
    private readonly NameIndex<Sign> _signsWithoutVerb;
    private readonly NameIndex<Fact> _facts;
    private readonly NameIndex<Role> _roles;
    private readonly NameIndex<Protection> _protections;
    private readonly FrozenSet<string> _positions;
    private readonly FrozenSet<string> _scaleWords;
    private readonly Lazy<FrozenSet<string>> _nouns;

    /// <param name="book">Whose names they are.</param>
    /// <param name="language">Of the cards.</param>
    public CardNames(ClassBook book, CardLanguage language)
    {
        ArgumentNullException.ThrowIfNull(book);
        ArgumentNullException.ThrowIfNull(language);
        _tongue = book.TongueOf(language.Code);
        (Book, Language, Key, _reader) = (book, language, new NameKey(language.Small), new NamePhraseReader(language));
        Library = new(this);
        _items = new(Shown(book.Items), Key);
        _places = new(Shown(book.Places), Key);
        _signs = new(Shown(book.Signs), Key);
        _signsWithoutVerb = new(Shown(book.Signs).Select(s => KeyValuePair.Create(WithoutVerb(s.Key, language.Small), s.Value)), Key);
        _facts = new(Shown(book.Facts), Key);
        _roles = new(Shown(book.Roles), Key);
        _protections = new(Shown(book.Protections), Key);
        _positions = book.Items.Values.SelectMany(i => i.Positions).Distinct().SelectMany(Keys).ToFrozenSet(StringComparer.Ordinal);
        _scaleWords = book.Items.Values.Where(i => i.Reading is not null).SelectMany(i => i.Reading!.Words.Keys).Distinct().SelectMany(Keys).ToFrozenSet(StringComparer.Ordinal);
        _nouns = new(() => NounsOf(Shown(book.Items).Select(i => i.Key), language));
    }

    public ClassBook Book { get; }

    /// <summary>A name of the book as cards in this language say it.</summary>
    public string Shown(string name) => _tongue.OfBook(name);

    public CardLanguage Language { get; }

    public NameKey Key { get; }

    /// <summary>Words of the names of items that are nouns.</summary>
    internal FrozenSet<string> Nouns => _nouns.Value;

    /// <summary>What the book calls after a noun at a vehicle, once looked for.</summary>
    internal ConcurrentDictionary<(string Vehicle, string Noun), ImmutableArray<string>> CalledAfter { get; } = new();

    /// <summary>The book's cards that are written in this language, or translated into it.</summary>
    internal IEnumerable<SourceText> TextsInLanguage => Book.In(_tongue).CardTexts.Where(t => (CardLanguages.Of(t) ?? Language).Code == Language.Code);

    /// <summary>The book's cards, for those that call others.</summary>
    internal CardLibrary Library { get; }

    /// <summary>The items that a phrase means.</summary>
    /// <param name="phrase">The words.</param>
    /// <param name="scope">What the letters stand for.</param>
    /// <param name="help">Whether to look for what was nearly meant, for messages.</param>
    public Found<Item> Items(Phrase phrase, Scope scope, bool help = false) => _items.Find(_reader.Read(phrase, scope), help);

    public Found<Sign> Signs(Phrase phrase, Scope scope, bool help = false)
    {
        NamePhrase read = _reader.Read(phrase, scope);
        Found<Sign> found = _signs.Find(read, help);
        return found.IsFound || _signsWithoutVerb.Find(read) is not { IsFound: true, IsLoose: false } other ? found : other;
    }

    public Found<Fact> Facts(Phrase phrase, Scope scope, bool help = false) => _facts.Find(_reader.Read(phrase, scope), help);

    public Found<Role> Roles(Phrase phrase, Scope scope, bool help = false) => _roles.Find(_reader.Read(phrase, scope), help);

    public Found<Protection> Protections(Phrase phrase, Scope scope, bool help = false)
    {
        NamePhrase read = _reader.Read(phrase, scope);
        Found<Protection> found = _protections.Find(read, help);
        return found.IsFound || ProtectionFor(phrase) is not { } inner ? found : _protections.Find(_reader.Read(inner, scope));
    }

    /// <summary>Whether the phrase is the word that stands for no role.</summary>
    public bool IsNobody(Phrase phrase)
    {
        ArgumentNullException.ThrowIfNull(phrase);
        return string.Equals(phrase.Text, Language.Small.Nobody, StringComparison.OrdinalIgnoreCase);
    }

    /// <summary>Whether the phrase is the word for the protection that is held, whichever it is.</summary>
    public bool IsProtectionHeld(Phrase phrase)
    {
        ArgumentNullException.ThrowIfNull(phrase);
        string key = Key.Of(phrase.Text);
        return Language.NameForms.Any(f => f.Operation == NameOperation.ProtectionHeld && Key.Of(f.Parts) == key);
    }

    /// <summary>The place a phrase means; of several sides the one on the letter's item's side.</summary>
    public Found<Place> Places(Phrase phrase, Scope scope, bool help = false)
    {
        NamePhrase read = _reader.Read(phrase, scope);
        Found<Place> found = _places.Find(read, help);
        ImmutableArray<string> owner = read.Referents.IsEmpty ? [] : read.Referents[0].OwnSide;
        if (!found.IsFound || found.Groups[0].Length == 1 || owner.IsEmpty)
        {
            return found;
        }

        Place? own = found.Groups[0].Where(p => SideOf(p, owner) is not null).MinBy(p => SideOf(p, owner));
        return own is null ? found : found with { Groups = [[own]] };
    }

    /// <summary>The position of an item that a phrase names, or null.</summary>
    public string? PositionOf(Item item, string phrase)
    {
        ArgumentNullException.ThrowIfNull(item);
        string key = Key.Of(phrase);
        return item.Positions.FirstOrDefault(p => p == phrase || Keys(p).Contains(key));
    }

    /// <summary>The word of an item's scale that a phrase names, or null.</summary>
    public string? ScaleWordOf(Item item, string phrase)
    {
        ArgumentNullException.ThrowIfNull(item);
        string key = Key.Of(phrase);
        return item.Reading?.Words.Keys.FirstOrDefault(w => w == phrase || Keys(w).Contains(key));
    }

    public bool IsPosition(string phrase) => _positions.Contains(Key.Of(phrase));

    public bool IsScaleWord(string phrase) => _scaleWords.Contains(Key.Of(phrase));

    private Phrase? ProtectionFor(Phrase phrase)
    {
        foreach (NameForm form in Language.NameForms.Where(f => f.Operation == NameOperation.ProtectionFor))
        {
            string start = Key.Of(form.Parts.TakeWhile(p => p != "{name}")) + " ";
            string text = Key.Of(phrase.Text);
            if (text.StartsWith(start, StringComparison.Ordinal))
            {
                return phrase with { Text = text[start.Length..] };
            }
        }

        return null;
    }

    /// <summary>How early a place stands among those of the owner's item; behind them all where it is only on the same side; null otherwise.</summary>
    private int? SideOf(Place place, ImmutableArray<string> owner)
    {
        foreach (Item item in Book.Items.Values.Where(i => owner.Contains(Key.Of(Shown(i.Name)))))
        {
            int at = item.Places.IndexOf(place.Name);
            if (at >= 0)
            {
                return at;
            }

            if (item.Places.IsEmpty && item.Position is { } position && position.Y * place.Position.Y > 0)
            {
                return int.MaxValue;
            }
        }

        return null;
    }

    private IEnumerable<KeyValuePair<string, T>> Shown<T>(IEnumerable<KeyValuePair<string, T>> named) => named.Select(n => KeyValuePair.Create(Shown(n.Key), n.Value));

    /// <summary>The ways in which a position or a word of a scale is said.</summary>
    private IEnumerable<string> Keys(string word) => _tongue.WaysOf(word).Select(Key.Of);

    private static FrozenSet<string> NounsOf(IEnumerable<string> items, CardLanguage language) =>
        items.SelectMany(n => WordList.Of(n)).Where(w => !w.IsMark && !language.Lint.NotNouns.Any(w.Is)).Select(w => w.Text).ToFrozenSet(StringComparer.OrdinalIgnoreCase);

    private static string WithoutVerb(string sign, SmallWords small)
    {
        foreach (string verb in small.SignVerbs)
        {
            if (sign.StartsWith(verb + " ", StringComparison.OrdinalIgnoreCase))
            {
                return sign[(verb.Length + 1)..];
            }

            int at = sign.IndexOf(" " + verb + " ", StringComparison.OrdinalIgnoreCase);
            if (at >= 0)
            {
                return sign[..at] + sign[(at + verb.Length + 1)..];
            }

            if (sign.EndsWith(" " + verb, StringComparison.OrdinalIgnoreCase))
            {
                return sign[..^(verb.Length + 1)];
            }
        }

        return sign;
    }
}
