using System.Collections.Immutable;
using Sightglass.Plant.Signals;

namespace Sightglass.Plant.Plans;

/// <summary>
/// Which networks bear on what: on signals those that they see; on a slot those of the switches that set it, and whatever these look at; on a network whatever
/// bears on the slots that its inputs and parameters follow from. Never too few; too many where an item asks for a slot that it does not use.
/// </summary>
internal sealed class NetworkNeeds(PlanBuilder builder)
{
    private readonly List<Signal> _signals = [.. builder.Signals];
    private readonly ILookup<int, ItemTies> _setting = builder.Ties.SelectMany(t => t.Sets.Select(s => (Slot: s, Item: t))).ToLookup(p => p.Slot, p => p.Item);
    private readonly ILookup<int, ItemTies> _steering = builder.Ties.SelectMany(t => t.Steers.Select(n => (Network: n, Item: t))).ToLookup(p => p.Network, p => p.Item);
    private readonly Dictionary<SwitchRule, ItemTies> _ofSwitch =
        builder.Ties.SelectMany(t => t.Switches.Select(s => (Switch: s, Item: t))).ToDictionary(p => p.Switch, p => p.Item);

    /// <summary>All networks without which signals would come out otherwise.</summary>
    public SortedSet<int> Of(IEnumerable<Signal> signals) => From(signals).Networks;

    /// <summary>The networks whose state signals see by themselves.</summary>
    public SortedSet<int> SeenBy(IEnumerable<Signal> signals)
    {
        SignalReads reads = new(_signals);
        foreach (Signal signal in signals)
        {
            reads.Add(signal);
        }

        return reads.Networks;
    }

    /// <summary>The same, those of given switches that look at nothing else (and of those that hand on a number, only where it is asked for), and the slots that bear on them, by their indices.</summary>
    public (SortedSet<int> Networks, ImmutableArray<SwitchRule> Switches, IReadOnlySet<int> Slots) Of(IEnumerable<Signal> signals, IEnumerable<SwitchRule> switches)
    {
        Spread asked = From(signals);
        return (asked.Networks, [.. switches.Where(s => asked.Networks.Contains(s.Network) && (!s.Follows || asked.Slots.Contains(s.Sets.Index)) && NothingElse(asked, s))], asked.Slots);
    }

    private Spread From(IEnumerable<Signal> signals)
    {
        Spread spread = new(this, null);
        spread.See(signals);
        spread.Finish();
        return spread;
    }

    private bool NothingElse(Spread asked, SwitchRule rule)
    {
        Spread more = new(this, asked);
        more.See(rule, _ofSwitch[rule]);
        more.Finish();
        return more.Networks.Count == 0;
    }

    /// <summary>Goes from what is asked to all that bears on it.</summary>
    /// <param name="needs">What bears on what.</param>
    /// <param name="known">What need not be gone into again, or null.</param>
    private sealed class Spread(NetworkNeeds needs, Spread? known)
    {
        private readonly HashSet<int> _slots = [];

        /// <summary>What sets a slot or steers a network, once what it reads has been seen: a circuit sets hundreds of slots.</summary>
        private readonly HashSet<ItemTies> _read = [];

        private readonly Queue<int> _openNetworks = new();
        private readonly Queue<int> _openSlots = new();

        public SortedSet<int> Networks { get; } = [];

        public IReadOnlySet<int> Slots => _slots;

        public void Finish()
        {
            while (true)
            {
                if (_openSlots.TryDequeue(out int slot))
                {
                    foreach (ItemTies item in needs._setting[slot])
                    {
                        SeeReads(item);
                        foreach (SwitchRule rule in item.Switches.Where(s => s.Sets.Index == slot))
                        {
                            See(rule, item);
                        }
                    }
                }
                else if (_openNetworks.TryDequeue(out int network))
                {
                    foreach (ItemTies item in needs._steering[network])
                    {
                        SeeReads(item);
                    }
                }
                else
                {
                    return;
                }
            }
        }

        public void See(IEnumerable<Signal> signals)
        {
            SignalReads reads = new(needs._signals);
            foreach (Signal signal in signals)
            {
                reads.Add(signal);
            }

            foreach (int network in reads.Networks)
            {
                See(network);
            }

            See(reads.Slots);
        }

        public void See(SwitchRule rule, ItemTies item)
        {
            See(rule.Network);
            See([rule.Margin, rule.To]);
            SeeReads(item);
        }

        private void SeeReads(ItemTies item)
        {
            if (_read.Add(item))
            {
                See(item.Reads);
            }
        }

        private void See(int network)
        {
            if (known?.Networks.Contains(network) != true && Networks.Add(network))
            {
                _openNetworks.Enqueue(network);
            }
        }

        private void See(IEnumerable<int> slots)
        {
            foreach (int slot in slots)
            {
                if (known?._slots.Contains(slot) != true && _slots.Add(slot))
                {
                    _openSlots.Enqueue(slot);
                }
            }
        }
    }
}
