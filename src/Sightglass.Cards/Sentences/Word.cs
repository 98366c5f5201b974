namespace Sightglass.Cards.Sentences;

/// <summary>A word or a mark of a text, with where it stands. Marks (<c>, ; : .</c> and quotes) and <c>'s</c> stand alone.</summary>
/// <param name="Text">As written, but apostrophes straight and quotes double.</param>
public readonly record struct Word(string Text, int Start, int End)
{
    /// <summary>Whether it is written on to the word before it.</summary>
    public bool IsMark => Text is "," or ";" or ":" or "." or "'s" or "'";

    public bool Is(string text) => string.Equals(Text, text, StringComparison.OrdinalIgnoreCase);

    public override string ToString() => Text;
}
