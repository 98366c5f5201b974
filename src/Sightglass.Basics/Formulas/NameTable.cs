using Sightglass.Basics.Quantities;

namespace Sightglass.Basics.Formulas;

/// <summary>A scope filled name by name; ids count from 0 in the order of adding.</summary>
public sealed class NameTable : INameScope
{
    private readonly Dictionary<string, FormulaName> _byName = new(StringComparer.Ordinal);
    private readonly List<FormulaName> _names = [];

    public IEnumerable<string> Names => _names.Select(n => n.Name);

    public int Count => _names.Count;

    public FormulaName this[int id] => _names[id];

    /// <summary>Adds a value; a name that is there already keeps its first meaning.</summary>
    /// <returns>The id.</returns>
    public int AddValue(string name, Dimension dimension, Unit? preferredUnit = null) =>
        Add(new(name, dimension, _names.Count, IsCondition: false, preferredUnit));

    /// <summary>Adds something that is true or false.</summary>
    /// <returns>The id.</returns>
    public int AddCondition(string name) => Add(new(name, Dimension.One, _names.Count, IsCondition: true));

    public bool TryGet(string name, out FormulaName found) => _byName.TryGetValue(name, out found);

    private int Add(FormulaName name)
    {
        if (_byName.TryAdd(name.Name, name))
        {
            _names.Add(name);
        }

        return _byName[name.Name].Id;
    }
}
