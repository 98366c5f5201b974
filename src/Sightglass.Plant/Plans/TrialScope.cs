using Sightglass.Basics.Formulas;

namespace Sightglass.Plant.Plans;

/// <summary>For a first try whose messages nobody reads: knows the same names, but lists none, so that no likely ones are looked for among all of them.</summary>
internal sealed class TrialScope(INameScope scope) : INameScope
{
    public IEnumerable<string> Names => [];

    public int LongestName => scope.LongestName;

    public bool TryGet(string name, out FormulaName found) => scope.TryGet(name, out found);
}
