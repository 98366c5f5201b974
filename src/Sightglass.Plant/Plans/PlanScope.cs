using Sightglass.Basics.Formulas;
using Sightglass.Basics.Quantities;

namespace Sightglass.Plant.Plans;

/// <summary>The names that formulas of a book may use, each the number of a signal.</summary>
public sealed class PlanScope : INameScope
{
    private readonly Dictionary<string, FormulaName> _names = new(StringComparer.Ordinal);

    public IEnumerable<string> Names => _names.Keys.Order(StringComparer.Ordinal);

    public int LongestName { get; private set; }

    public bool TryGet(string name, out FormulaName found) => _names.TryGetValue(name, out found);

    internal void Add(string name, Dimension dimension, int signal, bool isCondition)
    {
        _names[name] = new(name, dimension, signal, isCondition);
        LongestName = Math.Max(LongestName, name.Length);
    }
}
