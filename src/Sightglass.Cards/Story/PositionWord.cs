namespace Sightglass.Cards.Story;

/// <summary>A position, or another word of a closed set, beside its thing as a gap of a sentence that is kept unsaid: it is looked up, and agrees, when the sentence is said.</summary>
/// <param name="Item">As the book names it.</param>
/// <param name="Word">In English.</param>
public readonly record struct PositionWord(string Item, string Word)
{
    public override string ToString() => PositionWords.Of(Item, Word);
}
