using System.Collections.Concurrent;
using System.Collections.Immutable;
using Sightglass.Plant.Signals;

namespace Sightglass.Plant.Plans;

/// <content>Leaving out what nobody asks about.</content>
public sealed partial class Plan
{
    private readonly Lazy<NetworkNeeds> _needs;
    private readonly Plan? _whole;
    private readonly ConcurrentDictionary<Signal, bool> _known = new(ReferenceEqualityComparer.Instance);

    /// <summary>The networks that worlds of this plan step, by number, in order.</summary>
    public required ImmutableArray<int> Stepped { get; init; }

    /// <summary>Those of them whose state may be asked for at any moment, by number, in order.</summary>
    public ImmutableArray<int> Seen
    {
        get => field.IsDefault ? Stepped : field;
        private init;
    }

    /// <summary>
    /// Those that stand aside: they bear on what is asked through slots alone, so that nobody looks at them. Each goes its own way from step to step and is neither shown nor cut for
    /// what happens elsewhere, until one of its own inputs changes.
    /// </summary>
    public ImmutableArray<int> Aside => Seen.Length == Stepped.Length ? [] : [.. Stepped.Except(Seen)];

    /// <summary>The plan that steps every network.</summary>
    public Plan Whole => _whole ?? this;

    /// <summary>The systems whose networks stand still, in order.</summary>
    public ImmutableArray<string> LeftOut => [.. NetworkNames.Where((_, network) => !Steps(network))];

    /// <summary>
    /// The same plan, of which worlds step only what signals depend on. Every other network stands still, without its inputs and switches, and nothing may be
    /// asked of it; a switch of what is stepped is left out where it looks at what is not, since nothing asked depends on it then. Names, slots and numbers of
    /// networks stay what they are, and what is stepped goes as in a book that has no other systems, bit for bit.
    /// </summary>
    /// <param name="asked">All that will be asked for, where networks may stand aside; else what it depends on may be asked for as well.</param>
    /// <param name="aside">Whether those that no signal asked for sees by itself stand aside.</param>
    public Plan Only(IEnumerable<Signal> asked, bool aside = false)
    {
        asked = [.. asked];
        (SortedSet<int> needed, ImmutableArray<SwitchRule> switches, IReadOnlySet<int> slots) = _needs.Value.Of(asked, Whole.Switches);
        ImmutableArray<Resolver> resolvers = [.. Whole.Resolvers.Where(r => r.Sets.Any(s => slots.Contains(s.Index)))];
        ImmutableArray<int> seen = aside ? [.. _needs.Value.SeenBy(asked)] : [.. needed];
        bool all = seen.Length == NetworkNames.Length && switches.Length == Whole.Switches.Length && resolvers.Length == Whole.Resolvers.Length;
        return all ? Whole : new(Whole)
        {
            Book = Book,
            NetworkNames = NetworkNames,
            Stepped = [.. needed],
            Seen = seen,
            Signals = Signals,
            Slots = Slots,
            Bindings = [.. Whole.Bindings.Where(b => needed.Contains(b.Network))],
            Switches = switches,
            Pulses = Pulses,
            Resolvers = resolvers,
            Items = Items,
            Starts = Starts,
            Readings = Readings,
            Facts = Facts,
            Measures = Measures,
            Signs = Signs,
            Hazards = Hazards,
            Ways = Ways,
            Access = Access,
            AmountNames = AmountNames,
        };
    }

    private Plan(Plan whole) : this(whole._builder, whole._networks, whole._needs) => _whole = whole;

    public bool Steps(int network) => Stepped.Contains(network);

    /// <summary>Every slot that bears on a signal, by its index.</summary>
    public IReadOnlySet<int> SlotsBehind(Signal signal) => _needs.Value.Of([signal], []).Slots;

    /// <summary>Whether all that a signal depends on is stepped, and what it sees by itself does not stand aside, so that it may be asked for.</summary>
    public bool Knows(Signal signal) =>
        Seen.Length == NetworkNames.Length || _known.GetOrAdd(signal, s => _needs.Value.Of([s]).All(Steps) && _needs.Value.SeenBy([s]).All(n => Seen.Contains(n)));
}
