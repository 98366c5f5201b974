namespace Sightglass.Book.Yaml;

/// <summary>What of the limits is left while a book is read.</summary>
internal sealed class YamlBudget(YamlLimits limits)
{
    private int _nodes;

    public YamlLimits Limits => limits;

    /// <summary>Books one more node; false when the book has too many.</summary>
    public bool TakeNode() => ++_nodes <= limits.Nodes;
}
