namespace Sightglass.Cards.Sentences;

/// <summary>
/// One row of a language's table: the pattern of a sentence, what it means, and the words that tell it afterwards. The first row of an
/// operation whose gaps fit is the one that is printed; further rows are other ways to write it.
/// </summary>
public sealed class SentenceForm
{
    public SentenceForm(
        Operation operation,
        FormPlace place,
        string pattern,
        string past = "",
        string otherwise = "",
        string? position = null,
        FormHints hints = FormHints.None)
    {
        (Operation, Place, Pattern) = (operation, place, Pattern.Of(pattern));
        (Past, Otherwise, Position, Hints) = (past, otherwise, position, hints);
    }

    public Operation Operation { get; }

    public FormPlace Place { get; }

    public Pattern Pattern { get; }

    /// <summary>What was done, after 'You': <c>closed the {item}</c>.</summary>
    public string Past { get; }

    /// <summary>What was done when it did not hold or no answer came.</summary>
    public string Otherwise { get; }

    /// <summary>For a sentence that says the position itself: <c>Open</c> is <c>open</c>; of a condition, what an item that is no lamp may be as well.</summary>
    public string? Position { get; }

    public FormHints Hints { get; }

    public bool Has(FormHints hint) => (Hints & hint) != 0;

    public override string ToString() => Pattern.Text;
}
