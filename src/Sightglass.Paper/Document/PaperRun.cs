namespace Sightglass.Paper.Document;

/// <summary>Words in one style.</summary>
/// <param name="Text">As read, spaces at its ends included.</param>
/// <param name="Style">How they stand out.</param>
public readonly record struct PaperRun(string Text, RunStyle Style = RunStyle.Plain)
{
    /// <summary>The very text of a card: quantities in it are never said in other units, because it is what was tried.</summary>
    public bool Verbatim { get; init; }
}
