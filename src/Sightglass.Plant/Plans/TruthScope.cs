using Sightglass.Basics.Formulas;
using Sightglass.Basics.Quantities;
using Sightglass.Plant.Signals;

namespace Sightglass.Plant.Plans;

/// <summary>
/// The names of a plan, and of every fault whether it is in: <c>fault leak of forward compartment</c>. For those who judge and know the truth; a card never does.
/// </summary>
public sealed class TruthScope : INameScope
{
    private const string Fault = "fault ";

    /// <summary>What counts as nothing of a fault's first value, SI.</summary>
    private const double Nothing = 1e-12;

    private readonly Plan _plan;
    private readonly Dictionary<string, FormulaName> _faults = new(StringComparer.Ordinal);
    private readonly List<Signal> _signals;

    internal TruthScope(Plan plan)
    {
        _plan = plan;
        _signals = [.. plan.Signals];
        LongestName = plan.Scope.LongestName;
        foreach (ItemPlan item in plan.Items.Values)
        {
            foreach ((string fault, var values) in item.Faults)
            {
                string name = $"{Fault}{fault} of {item.Item.Name}";
                _faults[name] = new(name, Dimension.One, _signals.Count, IsCondition: true);
                LongestName = Math.Max(LongestName, name.Length);
                Slot slot = values[0].Slot;
                _signals.Add(new AnySignal([new SlotSignal(slot, 1, -Nothing), new SlotSignal(slot, -1, -Nothing)]));
            }
        }
    }

    public IEnumerable<string> Names => _plan.Scope.Names.Concat(_faults.Keys.Order(StringComparer.Ordinal));

    public int LongestName { get; }

    /// <summary>What the numbers of names stand for.</summary>
    internal IReadOnlyList<Signal> Signals => _signals;

    public bool TryGet(string name, out FormulaName found) => _plan.Scope.TryGet(name, out found) || _faults.TryGetValue(name, out found);
}
