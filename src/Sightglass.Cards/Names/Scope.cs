using System.Collections.Immutable;

namespace Sightglass.Cards.Names;

/// <summary>What the letters stand for while a phrase is resolved.</summary>
/// <param name="Letters">All of the card.</param>
/// <param name="Words">Letter → word; a letter that is missing stands for the first of its words.</param>
/// <param name="Owner">In Let: the letter that 'its' and 'whose' mean.</param>
public sealed record Scope(ImmutableArray<Letter> Letters, ImmutableDictionary<string, string> Words, Letter? Owner = null)
{
    public static readonly Scope Empty = new([], ImmutableDictionary<string, string>.Empty);

    public string WordOf(Letter letter)
    {
        ArgumentNullException.ThrowIfNull(letter);
        return Words.GetValueOrDefault(letter.Name, letter.Domain[0]);
    }

    public Letter? Find(string name) => Letters.FirstOrDefault(l => string.Equals(l.Name, name, l.IsRound ? StringComparison.OrdinalIgnoreCase : StringComparison.Ordinal));

    /// <summary>Within a round of <c>For each</c>: its noun means the one at hand. The innermost round stands last.</summary>
    public Scope InRound(Letter each, string word)
    {
        ArgumentNullException.ThrowIfNull(each);
        return this with { Letters = [.. Letters.Where(l => l.Name != each.Name), each], Words = Words.SetItem(each.Name, word) };
    }
}
