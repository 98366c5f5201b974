using System.Collections.Frozen;
using System.Collections.Immutable;

namespace Sightglass.Cards.Sentences;

/// <summary>A language that cards can be written in: nothing but tables. The parser knows no word of any language.</summary>
public sealed class CardLanguage
{
    private readonly FrozenDictionary<Operation, ImmutableArray<SentenceForm>> _byOperation;
    private readonly FrozenDictionary<FormPlace, ImmutableArray<SentenceForm>> _byPlace;

    public CardLanguage(string code, string name, ImmutableArray<SentenceForm> forms, ImmutableArray<NameForm> names, SmallWords small, LintWords lint)
    {
        (Code, Name, Forms, NameForms, Small, Lint) = (code, name, forms, names, small, lint);
        _byOperation = forms.GroupBy(f => f.Operation).ToFrozenDictionary(g => g.Key, g => g.ToImmutableArray());
        _byPlace = forms.GroupBy(f => f.Place).ToFrozenDictionary(g => g.Key, g => g.ToImmutableArray());
        Labels = [.. forms.Where(f => f.Place is FormPlace.Head or FormPlace.Notice).Select(f => f.Pattern.Leading).Where(l => l.Length > 0)];
    }

    /// <summary>The code of open standards (BCP 47).</summary>
    public string Code { get; }

    public string Name { get; }

    /// <summary>The table of sentences.</summary>
    public ImmutableArray<SentenceForm> Forms { get; }

    /// <summary>The table of ways to say names.</summary>
    public ImmutableArray<NameForm> NameForms { get; }

    public SmallWords Small { get; }

    public LintWords Lint { get; }

    /// <summary>The words of a stretch of a text, two that are written as one apart.</summary>
    public ImmutableArray<Word> WordsOf(string text, int start, int end)
    {
        ImmutableArray<Word> words = WordList.Of(text, start, end);
        return Small.Contractions.IsEmpty ? words : [.. words.SelectMany(Apart)];
    }

    /// <summary>A text with words together that are written as one where they meet.</summary>
    public string Joined(string text)
    {
        ArgumentNullException.ThrowIfNull(text);
        foreach (Contraction c in Small.Contractions)
        {
            text = Together(text, c);
        }

        return text;
    }

    /// <summary>A name with the article with which it is told.</summary>
    public string WithArticle(string name)
    {
        ArgumentNullException.ThrowIfNull(name);
        string article = ArticleOf(name);
        return article.Length == 0 ? name : $"{article} {name}";
    }

    /// <summary>Of the ways to say a word that which agrees with a name; the first where none does.</summary>
    /// <param name="ways">One or more.</param>
    /// <param name="name">Of a thing, without article.</param>
    public string Agreeing(ImmutableArray<string> ways, string name)
    {
        ArgumentNullException.ThrowIfNull(name);
        string? ending = ways.Length == 1 ? null : Small.Agreeing.FirstOrDefault(a => a.Article == ArticleOf(name)).Ending;
        return ending is null ? ways[0] : ways.FirstOrDefault(w => w.Split(' ')[0].EndsWith(ending, StringComparison.Ordinal), ways[0]);
    }

    private string ArticleOf(string name)
    {
        string first = " " + name.Split([' ', ','], 2)[0].ToLowerInvariant();
        return Small.ArticlesByEnding.FirstOrDefault(e => first.EndsWith(e.Ending, StringComparison.Ordinal)).Article ?? Small.Article;
    }

    private IEnumerable<Word> Apart(Word word) => Small.Contractions.FirstOrDefault(c => word.Is(c.Whole)) is { } c
        ? [word with { Text = char.IsUpper(word.Text[0]) ? PatternPrinter.Capital(c.First) : c.First }, word with { Text = c.Second }]
        : [word];

    private static string Together(string text, Contraction c)
    {
        string apart = $"{c.First} {c.Second}";
        for (int at = text.IndexOf(apart, StringComparison.OrdinalIgnoreCase); at >= 0; at = text.IndexOf(apart, at + 1, StringComparison.OrdinalIgnoreCase))
        {
            int end = at + apart.Length;
            bool stands = (at == 0 || !char.IsLetterOrDigit(text[at - 1])) && (end == text.Length || !char.IsLetterOrDigit(text[end]));
            if (stands)
            {
                text = string.Concat(text.AsSpan(0, at), char.IsUpper(text[at]) ? PatternPrinter.Capital(c.Whole) : c.Whole, text.AsSpan(end));
            }
        }

        return text;
    }

    /// <summary>The words with which head lines and notices begin.</summary>
    public ImmutableArray<ImmutableArray<string>> Labels { get; }

    public ImmutableArray<SentenceForm> At(FormPlace place) => _byPlace.GetValueOrDefault(place, []);

    public ImmutableArray<SentenceForm> Of(Operation operation) => _byOperation.GetValueOrDefault(operation, []);

    /// <summary>The row with which an operation is printed: the first whose gaps are just these; null where the language lacks it.</summary>
    public SentenceForm? FormFor(Operation operation, IEnumerable<string> gaps)
    {
        HashSet<string> filled = [.. gaps];
        ImmutableArray<SentenceForm> rows = Of(operation);
        return rows.FirstOrDefault(f => filled.IsSubsetOf(f.Pattern.SlotNames) && filled.IsSupersetOf(f.Pattern.Required)) ?? rows.FirstOrDefault();
    }

    /// <summary>What lint and the compiler should know about an operation.</summary>
    public FormHints HintsOf(Operation operation) => Of(operation).FirstOrDefault()?.Hints ?? FormHints.None;
}
