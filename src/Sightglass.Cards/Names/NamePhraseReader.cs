using System.Collections.Immutable;
using Sightglass.Cards.Sentences;
using Sightglass.Cards.Tree;

namespace Sightglass.Cards.Names;

/// <summary>
/// Works out what a phrase with letters may be the name of: <c>supply valve of C</c>, <c>C's supply valve</c>, <c>compartment C</c>,
/// <c>the sight glass of each other compartment</c>. All words come from the language's table.
/// </summary>
public sealed class NamePhraseReader(CardLanguage language)
{
    private static readonly NameOperation[] s_quantifying = [NameOperation.EachOther, NameOperation.AnyOther, NameOperation.Other, NameOperation.Each, NameOperation.Any];

    private readonly NameKey _key = new(language.Small);

    /// <summary>Reads a phrase. Never fails: without a letter it is one referent with one key.</summary>
    public NamePhrase Read(Phrase phrase, Scope scope)
    {
        ArgumentNullException.ThrowIfNull(phrase);
        ArgumentNullException.ThrowIfNull(scope);
        List<string> words = _key.Bare(phrase.Words);
        Letter? sideOf = TakeOwnSide(words, scope);
        TakeSide(words);
        if (scope.Owner is not null)
        {
            TakeIts(words, scope.Owner);
        }

        if (TryQuantified(words, scope) is { } quantified)
        {
            return quantified;
        }

        if (TryLetter(words, scope) is { } found)
        {
            return new(Quantifier.One, [WithSide(Referent(words, found, scope.WordOf(found.Letter), scope), sideOf, scope)]);
        }

        return new(Quantifier.One, [WithSide(Plain(words, scope), sideOf, scope)]);
    }

    /// <summary>The letter that a phrase mentions, if any.</summary>
    public Letter? LetterIn(Phrase phrase, Scope scope)
    {
        ArgumentNullException.ThrowIfNull(phrase);
        return phrase.Words.Select(w => scope.Find(w.Text)).FirstOrDefault(l => l is not null);
    }

    private NamePhrase.Referent Plain(List<string> words, Scope scope)
    {
        List<string> keys = [_key.Of(words)];
        if (scope.Owner is { } owner)
        {
            string word = scope.WordOf(owner);
            keys.Add(_key.Of([word, .. words]));
            keys.Add(_key.Of([.. words, .. OfWords(), word]));
        }

        return new(null, [.. keys], []);
    }

    private NamePhrase.Referent WithSide(NamePhrase.Referent referent, Letter? sideOf, Scope scope) =>
        sideOf is null ? referent : referent with { Word = scope.WordOf(sideOf), OwnSide = ItemKeys(sideOf, scope.WordOf(sideOf)) };

    private ImmutableArray<string> ItemKeys(Letter letter, string word)
    {
        List<string> noun = _key.Bare(letter.Noun.Words);
        return [_key.Of([word, .. noun]), _key.Of([.. noun, word]), _key.Of([word])];
    }

    private NamePhrase? TryQuantified(List<string> words, Scope scope)
    {
        foreach (NameOperation operation in s_quantifying)
        {
            foreach (NameForm form in language.NameForms.Where(f => f.Operation == operation))
            {
                foreach (Letter letter in scope.Letters)
                {
                    List<string> wanted = [.. form.Parts.SelectMany(p => p == "{noun}" ? _key.Bare(letter.Noun.Words) : [p])];
                    int at = IndexOf(words, wanted, 0);
                    if (at >= 0)
                    {
                        return Quantified(words, operation, new Mention(letter, at, wanted.Count), scope);
                    }
                }
            }
        }

        return null;
    }

    private NamePhrase? Quantified(List<string> words, NameOperation operation, Mention mention, Scope scope)
    {
        bool others = operation is NameOperation.EachOther or NameOperation.AnyOther or NameOperation.Other;
        ImmutableArray<string> domain = mention.Letter.Domain;
        if (operation == NameOperation.Other && domain.Length != 2)
        {
            return null;
        }

        IEnumerable<string> meant = others ? domain.Where(w => w != scope.WordOf(mention.Letter)) : domain;
        bool any = operation is NameOperation.AnyOther or NameOperation.Any;
        return new(operation == NameOperation.Other ? Quantifier.One : any ? Quantifier.Any : Quantifier.Each, [.. meant.Select(w => Referent(words, mention, w, scope))]);
    }

    private Mention? TryLetter(List<string> words, Scope scope)
    {
        for (int i = 0; i < words.Count; i++)
        {
            if (scope.Find(words[i]) is not { } letter)
            {
                continue;
            }

            List<string> noun = _key.Bare(letter.Noun.Words);
            int before = i - noun.Count;
            if (before >= 0 && IndexOf(words, noun, before) == before)
            {
                return new(letter, before, noun.Count + 1);
            }

            return IndexOf(words, noun, i + 1) == i + 1 ? new(letter, i, noun.Count + 1) : new(letter, i, 1);
        }

        return null;
    }

    private NamePhrase.Referent Referent(List<string> words, Mention mention, string word, Scope scope)
    {
        List<string> before = words[..mention.At];
        List<string> after = words[(mention.At + mention.Length)..];
        List<string> noun = _key.Bare(mention.Letter.Noun.Words);
        List<string> of = OfWords();
        List<string> keys = [];
        if (EndsWith(before, of))
        {
            keys.Add(_key.Of([word, .. before[..^of.Count], .. after]));
        }

        List<string> own = OwnWords();
        if (after.Count > own.Count && IndexOf(after, own, 0) == 0)
        {
            after = after[own.Count..];
            keys.Add(_key.Of([.. before, word, .. after]));
            keys.Add(_key.Of([.. before, .. after, .. of, word]));
            keys.Add(_key.Of([.. before, .. after, .. of, word, .. noun]));
        }

        keys.Add(_key.Of([.. before, word, .. after]));
        keys.Add(_key.Of([.. before, word, .. noun, .. after]));
        keys.Add(_key.Of([.. before, .. noun, word, .. after]));
        keys.Add(_key.Of([.. before, word, .. after]));
        return new(word, [.. keys.Distinct(StringComparer.Ordinal)], []);
    }

    /// <summary><c>fuel panel on the right side</c> is <c>fuel panel, right</c>.</summary>
    private void TakeSide(List<string> words)
    {
        foreach (NameForm form in language.NameForms.Where(f => f.Operation == NameOperation.OnSide))
        {
            List<string> parts = Between(form);
            int side = parts.IndexOf("{side}");
            int start = words.Count - parts.Count;
            if (start > 0 && Enumerable.Range(0, parts.Count).All(i => i == side || Same(words[start + i], parts[i])))
            {
                string word = words[start + side];
                words.RemoveRange(start, parts.Count);
                words.AddRange([",", word]);
                return;
            }
        }
    }

    private Letter? TakeOwnSide(List<string> words, Scope scope)
    {
        foreach (NameForm form in language.NameForms.Where(f => f.Operation == NameOperation.OnOwnSide))
        {
            foreach (Letter letter in scope.Letters)
            {
                List<string> parts = [.. Between(form).Select(p => p == "{letter}" ? letter.Name : p)];
                int start = words.Count - parts.Count;
                if (start > 0 && IndexOf(words, parts, start) == start)
                {
                    words.RemoveRange(start, parts.Count);
                    return letter;
                }
            }
        }

        return null;
    }

    private void TakeIts(List<string> words, Letter owner)
    {
        string? its = language.NameForms.FirstOrDefault(f => f.Operation == NameOperation.Its)?.Parts[0];
        int at = its is null ? -1 : words.FindIndex(w => Same(w, its));
        if (at >= 0)
        {
            words.RemoveAt(at);
            words.AddRange([.. OfWords(), owner.Name]);
        }
    }

    /// <summary>The parts of a form after <c>{name}</c>, without articles.</summary>
    private List<string> Between(NameForm form) => _key.Bare(form.Parts.Skip(1).Select(p => new Word(p, 0, 0)));

    private List<string> OfWords() =>
        [.. language.NameForms.First(f => f.Operation == NameOperation.Of).Parts.Where(p => p[0] != '{')];

    private List<string> OwnWords() =>
        [.. language.NameForms.First(f => f.Operation == NameOperation.Own).Parts.Where(p => p[0] != '{')];

    private static bool EndsWith(List<string> words, List<string> end) =>
        words.Count > end.Count && IndexOf(words, end, words.Count - end.Count) == words.Count - end.Count;

    private static int IndexOf(List<string> words, List<string> wanted, int from)
    {
        for (int at = from; wanted.Count > 0 && at + wanted.Count <= words.Count; at++)
        {
            if (wanted.Index().All(w => Same(words[at + w.Index], w.Item)))
            {
                return at;
            }
        }

        return -1;
    }

    private static bool Same(string a, string b) => string.Equals(a, b, StringComparison.OrdinalIgnoreCase);

    private readonly record struct Mention(Letter Letter, int At, int Length);
}
