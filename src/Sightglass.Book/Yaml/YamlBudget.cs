namespace Sightglass.Book.Yaml;

/// <summary>What of the limits is left while a book is read.</summary>
internal sealed class YamlBudget(YamlLimits limits)
{
    public YamlLimits Limits => limits;

    /// <summary>Nodes booked so far, also those that were too many.</summary>
    public int Taken { get; private set; }

    /// <summary>Books one more node; false when the book has too many.</summary>
    public bool TakeNode() => ++Taken <= limits.Nodes;
}
