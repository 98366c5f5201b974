using System.Collections.Immutable;

namespace Sightglass.Cards.Names;

/// <summary>What a phrase turned out to name.</summary>
/// <param name="Quantifier">How many are meant.</param>
/// <param name="Groups">For each referent, the things it may be: one, or several between which the place decides.</param>
/// <param name="Tried">The key under which nothing was found, or null.</param>
/// <param name="Nearest">A name like it, or null.</param>
/// <param name="Word">The letter's word for which nothing was found.</param>
/// <param name="IsLoose">The name was found only by looking past order, hyphens or a plural: not the label in the book.</param>
public sealed record Found<T>(Quantifier Quantifier, ImmutableArray<ImmutableArray<T>> Groups, string? Tried = null, string? Nearest = null, string? Word = null, bool IsLoose = false)
{
    public bool IsFound => Tried is null && !Groups.IsEmpty;
}
