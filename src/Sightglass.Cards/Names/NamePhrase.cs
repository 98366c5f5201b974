using System.Collections.Immutable;

namespace Sightglass.Cards.Names;

/// <summary>
/// A phrase read as a name: how many it means and, for each, the keys to try in order. A referent with <see cref="NamePhrase.Referent.OwnSide"/> wants
/// the side on which the letter's item is.
/// </summary>
public sealed record NamePhrase(Quantifier Quantifier, ImmutableArray<NamePhrase.Referent> Referents)
{
    /// <summary>One thing meant.</summary>
    /// <param name="Word">The word for which the letter stands, or null without a letter.</param>
    /// <param name="Keys">Keys to try, the likeliest first.</param>
    /// <param name="OwnSide">Keys of the item whose side is meant by <c>on C's side</c>; empty otherwise.</param>
    public sealed record Referent(string? Word, ImmutableArray<string> Keys, ImmutableArray<string> OwnSide);
}
