using System.Collections.Immutable;
using Sightglass.Book.Model;

namespace Sightglass.Cards.Programs;

/// <summary>
/// The item that a phrase means. Nearly always one; <c>the sight glass of C</c> means the one that can be read from where the
/// person stands, so that it stays a choice until the place is known.
/// </summary>
public sealed class ItemChoice
{
    /// <exception cref="ArgumentException">No candidate.</exception>
    public ItemChoice(ImmutableArray<Item> candidates)
    {
        if (candidates.IsDefaultOrEmpty)
        {
            throw new ArgumentException("A choice needs at least one item.", nameof(candidates));
        }

        Candidates = candidates;
    }

    /// <summary>In the order of their names; one when the name or the card's flow of places settles it.</summary>
    public ImmutableArray<Item> Candidates { get; }

    /// <summary>Whether the place no longer matters.</summary>
    public bool IsSettled => Candidates.Length == 1;

    /// <summary>
    /// The item meant by somebody who stands at a place: the first candidate within reach from there, or the first of all when none is
    /// (which is then out of reach, as any other item would be).
    /// </summary>
    /// <param name="place">A place's name, or null for somebody on the way.</param>
    public Item At(string? place)
    {
        if (!IsSettled && place is not null)
        {
            foreach (Item item in Candidates)
            {
                if (item.Places.AsSpan().Contains(place))
                {
                    return item;
                }
            }
        }

        return Candidates[0];
    }

    public override string ToString() => string.Join(" | ", Candidates.Select(i => i.Name));
}
