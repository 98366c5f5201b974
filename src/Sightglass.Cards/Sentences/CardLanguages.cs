using System.Collections.Immutable;
using Sightglass.Basics.Diagnostics;
using Sightglass.Basics.Language;

namespace Sightglass.Cards.Sentences;

/// <summary>The languages that cards can be written in.</summary>
public static class CardLanguages
{
    public static ImmutableArray<CardLanguage> All { get; } = [EnglishForms.Language, SpanishForms.Language];

    /// <summary>The language in which the words of a tongue are; English where cards have no forms in it.</summary>
    public static CardLanguage Of(Tongue tongue)
    {
        ArgumentNullException.ThrowIfNull(tongue);
        return All.FirstOrDefault(l => l.Code == tongue.Code) ?? EnglishForms.Language;
    }

    /// <summary>The language that a card is written in, told by the words with which its first line begins; null where it begins like no card.</summary>
    public static CardLanguage? Of(SourceText card)
    {
        ArgumentNullException.ThrowIfNull(card);
        string? first = card.Text.Split('\n').Select(l => l.Trim('\uFEFF', ' ', '\t', '\r')).FirstOrDefault(l => l.Length > 0 && !l.StartsWith('#'));
        return first is null ? null : All.FirstOrDefault(l => l.Of(Operation.Card).Any(f => Begins(first, f.Pattern.Leading)));
    }

    private static bool Begins(string line, ImmutableArray<string> words)
    {
        ImmutableArray<Word> found = WordList.Of(line);
        return words.Length <= found.Length && words.Index().All(w => found[w.Index].Is(w.Item));
    }
}
