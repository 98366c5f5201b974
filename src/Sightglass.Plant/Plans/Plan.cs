using System.Collections.Immutable;
using Sightglass.Book.Model;
using Sightglass.Network.Compile;
using Sightglass.Plant.Signals;

namespace Sightglass.Plant.Plans;

/// <summary>
/// A book (for one road number) compiled to networks, slots and signals: names resolved to numbers once, shared by every world.
/// </summary>
public sealed partial class Plan
{
    private readonly Lazy<ImmutableArray<Topology>> _networks;

    private readonly PlanBuilder _builder;
    private readonly Lazy<SlotUses> _uses;
    private readonly Lazy<TruthScope> _truth;
    private readonly Lazy<ImmutableArray<MarginTape>> _margins;

    internal Plan(PlanBuilder builder, Lazy<ImmutableArray<Topology>> networks, Lazy<NetworkNeeds> needs)
    {
        (_builder, Scope, _networks, _needs) = (builder, builder.Scope, networks, needs);
        _uses = new(() => new(this, _builder));
        _truth = new(() => new(this));
        _margins = new(() => [.. Enumerable.Range(0, NetworkNames.Length).Select(n => new MarginTape(this, n))]);
    }

    public required ClassBook Book { get; init; }

    /// <summary>Compiled when first asked for: who only checks a book steps nothing.</summary>
    public ImmutableArray<Topology> Networks => _networks.Value;

    /// <summary>What follows from each slot; put together when first asked for.</summary>
    public SlotUses Uses => _uses.Value;

    /// <summary>Its names for those who know the truth; put together when first asked for.</summary>
    public TruthScope Truth => _truth.Value;

    /// <summary>The systems whose networks they are; an empty name for items of no system.</summary>
    public required ImmutableArray<string> NetworkNames { get; init; }

    /// <summary>By the number that a name of the scope carries.</summary>
    public required ImmutableArray<Signal> Signals { get; init; }

    public PlanScope Scope { get; }

    public required ImmutableArray<SlotInfo> Slots { get; init; }

    public required ImmutableArray<Binding> Bindings { get; init; }

    public required ImmutableArray<SwitchRule> Switches { get; init; }

    public required ImmutableArray<PulseRule> Pulses { get; init; }

    /// <summary>What is solved at events, in this order until all of it rests.</summary>
    public required ImmutableArray<Resolver> Resolvers { get; init; }

    public required ImmutableSortedDictionary<string, ItemPlan> Items { get; init; }

    public required ImmutableSortedDictionary<string, StartRule> Starts { get; init; }

    /// <summary>What each instrument would show with every digit.</summary>
    public required ImmutableSortedDictionary<string, Signal> Readings { get; init; }

    /// <summary>Margins of the book's facts.</summary>
    public required ImmutableSortedDictionary<string, Signal> Facts { get; init; }

    /// <summary>Margins of what can be seen, heard or smelled.</summary>
    public required ImmutableSortedDictionary<string, Signal> Signs { get; init; }

    /// <summary>Margins of hazards that bite under a condition only; the others always bite.</summary>
    public required ImmutableSortedDictionary<string, Signal> Hazards { get; init; }

    /// <summary>What quantities of published rules are on this machine, by their names.</summary>
    public required ImmutableSortedDictionary<string, PlanMeasure> Measures { get; init; }

    /// <summary>While everything that people go by can be used.</summary>
    public required WayTable Ways { get; init; }

    public required Access Access { get; init; }

    /// <summary>Names of amounts in the order of each network's builder, for snapshots and records.</summary>
    public required ImmutableArray<ImmutableArray<string>> AmountNames { get; init; }

    /// <summary>The margins of a network's switches; put together when first asked for.</summary>
    public MarginTape MarginsOf(int network) => _margins.Value[network];

    /// <summary>What an indication would show with every digit; null for an item that shows nothing.</summary>
    public Signal? ReadingOf(Item item)
    {
        ArgumentNullException.ThrowIfNull(item);
        return Readings.GetValueOrDefault(item.Name);
    }

    /// <summary>The signal of a name in scope, or null.</summary>
    public Signal? FindSignal(string name) => Scope.TryGet(name, out Basics.Formulas.FormulaName found) ? Signals[found.Id] : null;
}
