using System.Collections.Immutable;
using Sightglass.Basics.Formulas;
using Sightglass.Plant.Signals;

namespace Sightglass.Plant.Plans;

/// <content>Numbers of one network that others follow.</content>
public sealed partial class PlanBuilder
{
    /// <summary>The networks whose state a formula speaks of, directly or through facts.</summary>
    public ImmutableSortedSet<int> NetworksOf(Formula formula)
    {
        ArgumentNullException.ThrowIfNull(formula);
        SignalReads reads = new(Signals);
        new FormulaSignal(formula).TellReads(reads);
        return [.. reads.Networks];
    }

    /// <summary>The network whose state a formula speaks of; another where it speaks of slots only; null where it speaks of several.</summary>
    internal int? OneNetworkOf(Formula formula, int otherwise) => NetworksOf(formula) switch
    {
        [] => otherwise,
        [var one] => one,
        _ => null,
    };

    /// <summary>Hands a number of one network to others: the slot holds what was told last, which is never further from the truth than the band.</summary>
    /// <param name="name">For messages.</param>
    /// <param name="network">Where the source comes from.</param>
    /// <param name="source">SI; of that network and of slots only.</param>
    /// <param name="band">Greater than zero.</param>
    /// <param name="told">The slot that others' bindings read.</param>
    /// <param name="when">Told only while this holds.</param>
    public void Follow(string name, int network, Signal source, double band, Slot told, SlotCondition when)
    {
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(band);
        AddSwitch(new($"{name}", network, new BandSignal(source, told, band), when, told, source, Follows: true));
    }
}
