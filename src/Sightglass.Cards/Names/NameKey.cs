using Sightglass.Cards.Sentences;

namespace Sightglass.Cards.Names;

/// <summary>Makes names comparable: lower case, single spaces, no articles; and, looser, without order, marks and plural endings.</summary>
public sealed class NameKey(SmallWords small)
{
    private readonly HashSet<string> _articles = new(small.Articles, StringComparer.OrdinalIgnoreCase);

    /// <summary>The key of a name.</summary>
    public string Of(string name) => Of(WordList.Of(name).Select(w => w.Text));

    /// <summary>The key of words.</summary>
    public string Of(IEnumerable<string> words) =>
        WordList.Join(words.Where(w => !_articles.Contains(w)).Select(w => new Word(w, 0, 0))).ToLowerInvariant();

    /// <summary>Words without articles.</summary>
    public List<string> Bare(IEnumerable<Word> words) => [.. words.Select(w => w.Text).Where(w => !_articles.Contains(w))];

    /// <summary>The same for names that differ only in order, hyphens, commas, case or a plural s.</summary>
    public string Loose(string name)
    {
        IEnumerable<string> parts = name.Replace('-', ' ').Replace('_', ' ').Replace(",", " ", StringComparison.Ordinal).ToLowerInvariant()
            .Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries)
            .Where(w => !_articles.Contains(w))
            .Select(w => w.Length > 3 && w.EndsWith('s') && !w.EndsWith("ss", StringComparison.Ordinal) ? w[..^1] : w)
            .Order(StringComparer.Ordinal);
        return string.Join(' ', parts);
    }
}
