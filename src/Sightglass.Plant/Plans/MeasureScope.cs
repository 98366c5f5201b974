using System.Diagnostics.CodeAnalysis;
using Sightglass.Basics.Formulas;
using Sightglass.Basics.Quantities;
using Sightglass.Book.Kinds;
using Sightglass.Book.Model;
using Sightglass.Plant.Signals;

namespace Sightglass.Plant.Plans;

/// <summary>
/// The names of measures: those of any formula, and what the book gives for items: <c>PARAMETER of ITEM</c>, and where it is given by position,
/// <c>PARAMETER in POSITION of ITEM</c>. A true quantity of the same name goes before.
/// </summary>
internal sealed class MeasureScope(PlanBuilder builder) : INameScope
{
    private readonly Dictionary<string, FormulaName> _given = new(StringComparer.Ordinal);
    private readonly Dictionary<int, double> _values = [];

    public IEnumerable<string> Names => builder.Scope.Names.Concat(builder.Book.Items.Values.SelectMany(Given)).Distinct(StringComparer.Ordinal);

    public bool TryGet(string name, out FormulaName found)
    {
        if (builder.Scope.TryGet(name, out found) || _given.TryGetValue(name, out found))
        {
            return true;
        }

        if (!TryFind(name, out double value, out Unit? unit))
        {
            return false;
        }

        found = new(name, unit.Dimension, builder.Signals.Count, PreferredUnit: unit);
        builder.Signals.Add(new ConstantSignal(value));
        _values[found.Id] = value;
        _given[name] = found;
        return true;
    }

    /// <summary>The value of a name that never changes, SI; null for one of the running machine.</summary>
    public double? ValueOf(int id) => _values.TryGetValue(id, out double value) ? value : null;

    private bool TryFind(string name, out double value, [NotNullWhen(true)] out Unit? unit)
    {
        for (int of = name.IndexOf(" of ", StringComparison.Ordinal); of > 0; of = name.IndexOf(" of ", of + 1, StringComparison.Ordinal))
        {
            if (builder.Book.Items.TryGetValue(name[(of + 4)..], out Item? item) && TryParameter(item, name[..of], out value, out unit))
            {
                return true;
            }
        }

        (value, unit) = (0, null);
        return false;
    }

    private static bool TryParameter(Item item, string name, out double value, [NotNullWhen(true)] out Unit? unit)
    {
        foreach (KindParameter p in item.Kind.Parameters)
        {
            if (!item.Parameters.TryGetValue(p.Name, out ParameterValue? given))
            {
                continue;
            }

            unit = given.Unit ?? UnitTable.SiOf(p.Dimension);
            value = given.Number;
            if ((p.Type == ParameterType.Quantity && p.Name == name)
                || (p.Type == ParameterType.ByPosition && given.ByPosition.Any(b => name == $"{p.Name} in {b.Key}") && given.ByPosition.TryGetValue(name[(p.Name.Length + 4)..], out value)))
            {
                return true;
            }
        }

        (value, unit) = (0, null);
        return false;
    }

    private static IEnumerable<string> Given(Item item) => item.Kind.Parameters.Where(p => item.Parameters.ContainsKey(p.Name)).SelectMany(p => p.Type switch
    {
        ParameterType.Quantity => [$"{p.Name} of {item.Name}"],
        ParameterType.ByPosition => item.Parameters[p.Name].ByPosition.Keys.Select(k => $"{p.Name} in {k} of {item.Name}"),
        _ => Enumerable.Empty<string>(),
    });
}
