namespace Sightglass.Basics.Language;

/// <summary>A word of a closed set as a gap of a sentence that is kept unsaid: it is looked up when the sentence is said (<see cref="Say.Word"/>).</summary>
/// <param name="Word">In English.</param>
public readonly record struct ClosedWord(string Word)
{
    public override string ToString() => Say.Word(Word);
}
