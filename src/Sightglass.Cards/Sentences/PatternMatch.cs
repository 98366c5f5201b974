namespace Sightglass.Cards.Sentences;

/// <summary>One way in which words fit a pattern: gap → from which word to which (end excluded).</summary>
public sealed class PatternMatch
{
    private readonly List<(PatternPart.Slot Slot, int From, int To)> _gaps = [];

    public IReadOnlyList<(PatternPart.Slot Slot, int From, int To)> Gaps => _gaps;

    internal void Push(PatternPart.Slot slot, int from, int to) => _gaps.Add((slot, from, to));

    internal void Pop() => _gaps.RemoveAt(_gaps.Count - 1);

    internal PatternMatch Copy()
    {
        PatternMatch copy = new();
        copy._gaps.AddRange(_gaps);
        return copy;
    }
}
