using System.Collections.Immutable;
using Sightglass.Cards.Sentences;

namespace Sightglass.Cards.Names;

/// <summary>
/// Makes names comparable: lower case, single spaces, no articles; and, looser, without order, marks and plural endings. A single capital letter is no article but a part of its name: the A truck is no other.
/// </summary>
public sealed class NameKey(SmallWords small)
{
    private readonly ImmutableArray<Contraction> _contractions = small.Contractions;
    private readonly HashSet<string> _articles = new(small.Articles, StringComparer.OrdinalIgnoreCase);

    /// <summary>The key of a name.</summary>
    public string Of(string name) => Of(WordList.Of(name).Select(w => w.Text));

    /// <summary>The key of words.</summary>
    public string Of(IEnumerable<string> words) =>
        WordList.Join(Apart(words).Where(w => !_articles.Contains(w) || IsLetter(w)).Select(w => new Word(w, 0, 0))).ToLowerInvariant();

    /// <summary>Words without articles. What could be one and stands right behind another is a letter: <c>the a truck</c>.</summary>
    public List<string> Bare(IEnumerable<Word> words)
    {
        List<string> bare = [];
        bool behindArticle = false;
        foreach (Word word in _contractions.IsEmpty ? words : words.SelectMany(w => Apart([w.Text]).Select(t => w with { Text = t })))
        {
            bool isArticle = _articles.Contains(word.Text);
            if (!isArticle || IsLetter(word.Text) || (behindArticle && word.Text.Length == 1))
            {
                bare.Add(isArticle ? word.Text.ToUpperInvariant() : word.Text);
            }

            behindArticle = isArticle;
        }

        return bare;
    }

    /// <summary>Whether a word may be an article or the letter of a name: an article of one letter.</summary>
    public bool IsEither(string word) => word.Length == 1 && _articles.Contains(word);

    private IEnumerable<string> Apart(IEnumerable<string> words) => _contractions.IsEmpty
        ? words
        : words.SelectMany(w => _contractions.FirstOrDefault(c => string.Equals(c.Whole, w, StringComparison.OrdinalIgnoreCase)) is { } c ? [c.First, c.Second] : (string[])[w]);

    private static bool IsLetter(string word) => word.Length == 1 && char.IsUpper(word[0]);

    /// <summary>The same for names that differ only in order, hyphens, commas, case or a plural s.</summary>
    public string Loose(string name)
    {
        IEnumerable<string> parts = Apart(name.Replace('-', ' ').Replace('_', ' ').Replace(",", " ", StringComparison.Ordinal).ToLowerInvariant()
            .Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries))
            .Where(w => !_articles.Contains(w))
            .Select(w => w.Length > 3 && w.EndsWith('s') && !w.EndsWith("ss", StringComparison.Ordinal) ? w[..^1] : w)
            .Order(StringComparer.Ordinal);
        return string.Join(' ', parts);
    }
}
