using System.Collections.Immutable;

namespace Sightglass.Cards.Sentences;

/// <summary>Fills a pattern's gaps with texts. What may be left out is printed when all its gaps are filled.</summary>
public static class PatternPrinter
{
    /// <param name="pattern">The shape.</param>
    /// <param name="fill">The text of a gap, or null for one that is not filled.</param>
    public static string Print(Pattern pattern, Func<string, string?> fill)
    {
        ArgumentNullException.ThrowIfNull(pattern);
        ArgumentNullException.ThrowIfNull(fill);
        List<Word> words = [];
        Dictionary<string, string?> filled = pattern.SlotNames.ToDictionary(s => s, fill, StringComparer.Ordinal); // once each: a gap may hold sentences
        Add(words, pattern.Parts, filled.GetValueOrDefault);
        return WordList.Join(words);
    }

    /// <summary>With a capital at the start.</summary>
    public static string Capital(string text)
    {
        ArgumentNullException.ThrowIfNull(text);
        return text.Length == 0 ? text : char.ToUpperInvariant(text[0]) + text[1..];
    }

    /// <summary>Without a capital at the start.</summary>
    public static string Small(string text)
    {
        ArgumentNullException.ThrowIfNull(text);
        return text.Length == 0 ? text : char.ToLowerInvariant(text[0]) + text[1..];
    }

    private static void Add(List<Word> words, ImmutableArray<PatternPart> parts, Func<string, string?> fill)
    {
        foreach (PatternPart part in parts)
        {
            switch (part)
            {
                case PatternPart.Literal literal:
                    words.Add(new(literal.Text, 0, 0));
                    break;
                case PatternPart.Slot slot:
                    words.Add(new(fill(slot.Name) ?? "", 0, 0));
                    break;
                case PatternPart.Optional optional when optional.Parts.OfType<PatternPart.Slot>().All(s => fill(s.Name) is not null):
                    Add(words, optional.Parts, fill);
                    break;
            }
        }
    }
}
