using System.Collections.Immutable;
using Sightglass.Basics.Diagnostics;
using Sightglass.Cards.Sentences;

namespace Sightglass.Cards.Parsing;

/// <summary>Says what a sentence that was not understood may have been meant to be.</summary>
internal static class SentenceHelp
{
    private const int MostForms = 3;

    public static string For(CardLanguage language, ImmutableArray<Word> words, int from, int to)
    {
        string first = words[from].Text;
        ImmutableArray<SentenceForm> steps = [.. language.At(FormPlace.Step).Where(f => f.Pattern.Leading.Length > 0)];
        ImmutableArray<string> same = [.. steps.Where(f => words[from].Is(f.Pattern.Leading[0])).Select(f => f.Pattern.Readable()).Take(MostForms)];
        if (!same.IsEmpty)
        {
            return "write " + string.Join(" or ", same.Select(s => $"`{s}`"));
        }

        string? near = Nearest.Find(first, steps.Select(f => f.Pattern.Leading[0]).Distinct(StringComparer.Ordinal));
        return near is null
            ? "begin with a verb of the language, such as " + string.Join(", ", steps.Select(f => f.Pattern.Leading[0]).Distinct(StringComparer.Ordinal).Take(8))
            : $"did you mean `{near}`?";
    }

    /// <summary>The label that a line may have been meant to begin with.</summary>
    public static string? LabelFor(CardLanguage language, ImmutableArray<Word> words)
    {
        int colon = words.IndexOf(words.FirstOrDefault(w => w.Is(":")));
        if (colon <= 0 || colon > 4)
        {
            return null;
        }

        string typed = WordList.Join(words[..colon]);
        return Nearest.DidYouMean(typed, language.Labels.Select(l => string.Join(' ', l.TakeWhile(w => w != ":"))));
    }
}
