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
    private readonly List<string> _of = [.. language.NameForms.First(f => f.Operation == NameOperation.Of).Parts.Where(p => p[0] != '{')];
    private readonly List<string> _own = [.. language.NameForms.First(f => f.Operation == NameOperation.Own).Parts.Where(p => p[0] != '{')];

    /// <summary>Reads a phrase. Never fails: without a letter it is one referent with one key.</summary>
    public NamePhrase Read(Phrase phrase, Scope scope)
    {
        ArgumentNullException.ThrowIfNull(phrase);
        ArgumentNullException.ThrowIfNull(scope);
        List<string> words = _key.Bare(phrase.Words);
        if (phrase.Words is not [{ Text: var first }, _, ..] || !_key.IsEither(first))
        {
            return Read(words, phrase, scope);
        }

        // Capitals do not matter at the beginning, so `A truck` may be any truck or the one of that name: as it is written first, then the other.
        bool isKept = words[0].Length == 1 && string.Equals(words[0], first, StringComparison.Ordinal);
        List<string> other = isKept ? words[1..] : [first.ToUpperInvariant(), .. words];
        return Either(Read(words, phrase, scope), Read(other, phrase, scope));
    }

    /// <summary>The keys of one reading, then those of another.</summary>
    private static NamePhrase Either(NamePhrase reading, NamePhrase other) => reading.Referents.Length != other.Referents.Length
        ? reading
        : reading with { Referents = [.. reading.Referents.Zip(other.Referents, (a, b) => a with { Keys = [.. a.Keys.Union(b.Keys, StringComparer.Ordinal)] })] };

    private NamePhrase Read(List<string> words, Phrase phrase, Scope scope)
    {
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

        if (Mentions(words, phrase, scope) is [{ } first, .. var others])
        {
            return new(Quantifier.One, [WithSide(Referent(words, first, scope.WordOf(first.Letter), others, scope), sideOf, scope)]);
        }

        return new(Quantifier.One, [WithSide(Plain(words, scope), sideOf, scope)]);
    }

    private NamePhrase.Referent Plain(List<string> words, Scope scope)
    {
        List<string> keys = [_key.Of(words)];
        if (scope.Owner is { } owner)
        {
            string word = scope.WordOf(owner);
            keys.Add(_key.Of([word, .. words]));
            keys.Add(_key.Of([.. words, .. _of, word]));
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
            foreach (NameForm form in language.NameForms)
            {
                if (form.Operation != operation || !form.Parts.All(p => p[0] == '{' || words.Contains(p, StringComparer.OrdinalIgnoreCase)))
                {
                    continue;
                }

                foreach (Letter letter in scope.Letters.Reverse())
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
        return new(operation == NameOperation.Other ? Quantifier.One : any ? Quantifier.Any : Quantifier.Each, [.. meant.Select(w => Referent(words, mention, w, [], scope))]);
    }

    /// <summary>Letters in one phrase beyond which no more are looked at: each triples the names to try.</summary>
    private const int MostMentions = 3;

    /// <summary>Where letters stand, with their nouns, from left to right: letters before what a round goes through, whose noun is no name of its own there.</summary>
    private List<Mention> Mentions(List<string> words, Phrase phrase, Scope scope)
    {
        List<Mention> mentions = [];
        foreach (Letter letter in scope.Letters.OrderBy(l => l.IsRound))
        {
            if (mentions.Count < MostMentions && (letter.IsRound ? RoundIn(words, phrase, letter) : LetterIn(words, letter)) is { } found && !mentions.Any(m => m.Overlaps(found)))
            {
                mentions.Add(found);
            }
        }

        mentions.Sort((a, b) => a.At.CompareTo(b.At));
        return mentions;
    }

    private Mention? LetterIn(List<string> words, Letter letter)
    {
        int at = words.IndexOf(letter.Name);
        if (at < 0)
        {
            return null;
        }

        List<string> noun = _key.Bare(letter.Noun.Words);
        int before = at - noun.Count;
        if (before >= 0 && IndexOf(words, noun, before) == before)
        {
            return new(letter, before, noun.Count + 1);
        }

        return IndexOf(words, noun, at + 1) == at + 1 ? new(letter, at, noun.Count + 1) : new(letter, at, 1);
    }

    /// <summary>The noun of a round, unless a word that it may stand for is said beside it: <c>the A truck</c> is no other truck.</summary>
    private Mention? RoundIn(List<string> words, Phrase phrase, Letter round)
    {
        List<string> noun = _key.Bare(round.Noun.Words);
        List<string> said = [.. phrase.Words.Select(w => w.Text)];
        int at = IndexOf(words, noun, 0);
        int there = IndexOf(said, noun, 0);
        bool named = there > 0 && round.Domain.Any(d => d == said[there - 1]);
        return at < 0 || named ? null : new(round, at, noun.Count);
    }

    private NamePhrase.Referent Referent(List<string> words, Mention mention, string word, List<Mention> others, Scope scope)
    {
        List<string> keys = [];
        foreach (List<string> variant in Filled(words, others, scope))
        {
            AddKeys(keys, variant, mention, word);
        }

        if (mention.Letter.IsRound || others.Any(o => o.Letter.IsRound))
        {
            keys.Add(_key.Of(words)); // the noun may stand in a name as well
        }

        return new(word, [.. keys.Distinct(StringComparer.Ordinal)], []);
    }

    /// <summary>The words with the letters that stand further right replaced, in each way that a name may hold them.</summary>
    private IEnumerable<List<string>> Filled(List<string> words, List<Mention> others, Scope scope)
    {
        IEnumerable<List<string>> filled = [words];
        foreach (Mention other in others.AsEnumerable().Reverse())
        {
            string word = scope.WordOf(other.Letter);
            List<string> noun = _key.Bare(other.Letter.Noun.Words);
            List<string>[] ways = [[word], [word, .. noun], [.. noun, word]];
            filled = filled.SelectMany(f => ways.Select(way => (List<string>)[.. f[..other.At], .. way, .. f[(other.At + other.Length)..]])).ToList();
        }

        return filled;
    }

    private void AddKeys(List<string> keys, List<string> words, Mention mention, string word)
    {
        List<string> before = words[..mention.At];
        List<string> after = words[(mention.At + mention.Length)..];
        List<string> noun = _key.Bare(mention.Letter.Noun.Words);
        if (EndsWith(before, _of))
        {
            keys.Add(_key.Of([word, .. before[..^_of.Count], .. after]));
        }

        if (after.Count > _own.Count && IndexOf(after, _own, 0) == 0)
        {
            after = after[_own.Count..];
            keys.Add(_key.Of([.. before, word, .. after]));
            keys.Add(_key.Of([.. before, .. after, .. _of, word]));
            keys.Add(_key.Of([.. before, .. after, .. _of, word, .. noun]));
        }

        keys.Add(_key.Of([.. before, word, .. after]));
        keys.Add(_key.Of([.. before, word, .. noun, .. after]));
        keys.Add(_key.Of([.. before, .. noun, word, .. after]));
    }

    /// <summary><c>fuel panel on the right side</c> is <c>fuel panel, right</c>.</summary>
    private void TakeSide(List<string> words)
    {
        foreach (NameForm form in language.NameForms.Where(f => f.Operation == NameOperation.OnSide))
        {
            List<string> parts = Between(form);
            int side = parts.IndexOf("{side}");
            int start = words.Count - parts.Count;
            if (start > 0 && language.Small.Sides.Contains(words[start + side], StringComparer.OrdinalIgnoreCase) && Enumerable.Range(0, parts.Count).All(i => i == side || Same(words[start + i], parts[i])))
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
            words.AddRange([.. _of, owner.Name]);
        }
    }

    /// <summary>The parts of a form after <c>{name}</c>, without articles.</summary>
    private List<string> Between(NameForm form) => _key.Bare(form.Parts.Skip(1).Select(p => new Word(p, 0, 0)));


    private static bool EndsWith(List<string> words, List<string> end) =>
        words.Count > end.Count && IndexOf(words, end, words.Count - end.Count) == words.Count - end.Count;

    private static int IndexOf(List<string> words, List<string> wanted, int from)
    {
        for (int at = from; wanted.Count > 0 && at + wanted.Count <= words.Count; at++)
        {
            int same = 0;
            while (same < wanted.Count && Same(words[at + same], wanted[same]))
            {
                same++;
            }

            if (same == wanted.Count)
            {
                return at;
            }
        }

        return -1;
    }

    private static bool Same(string a, string b) => string.Equals(a, b, StringComparison.OrdinalIgnoreCase);

    private readonly record struct Mention(Letter Letter, int At, int Length)
    {
        public bool Overlaps(Mention other) => At < other.At + other.Length && other.At < At + Length;
    }
}
