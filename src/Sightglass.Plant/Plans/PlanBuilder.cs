using System.Collections.Immutable;
using Sightglass.Basics.Diagnostics;
using Sightglass.Basics.Formulas;
using Sightglass.Basics.Quantities;
using Sightglass.Book.Model;
using Sightglass.Network.Compile;
using Sightglass.Plant.Circuits;
using Sightglass.Plant.Feeders;
using Sightglass.Plant.Gear;
using Sightglass.Plant.Kinds;
using Sightglass.Plant.Signals;

namespace Sightglass.Plant.Plans;

/// <summary>What kinds build into: networks of what is joined, slots, signals with names, bindings, rules.</summary>
public sealed partial class PlanBuilder
{
    private readonly StoreGroups _groups;
    private readonly Dictionary<StoreGroup, int> _networkOf = [];
    private readonly List<NetworkBuilder> _networks = [];
    private readonly List<List<string>> _amountNames = [];
    private readonly List<SortedSet<string>> _systems = [];
    private readonly Dictionary<string, StoreEnd> _stores = new(StringComparer.Ordinal);
    private readonly Dictionary<string, ItemPlan> _items = new(StringComparer.Ordinal);
    private readonly Dictionary<string, Slot> _slotOf = new(StringComparer.Ordinal);
    private readonly Dictionary<string, List<(SlotFunction Joined, ItemTies By)>> _joinedHeads = new(StringComparer.Ordinal);
    private readonly Dictionary<string, List<Slot>> _swaps = new(StringComparer.Ordinal);
    private readonly Dictionary<string, ItemTies> _tiesOf = new(StringComparer.Ordinal);
    private readonly List<(ItemTies Item, ItemTies Of)> _readBy = [];

    /// <summary>Of the item that is being built.</summary>
    private ItemTies _ties = new();

    public PlanBuilder(ClassBook book, DiagnosticList found)
    {
        (Book, Found, _groups) = (book, found, new(book));
        Items = [.. book.ItemsInOrder];
        WireGroups groups = new(book);
        (Circuits, Feeders, Gear) = (new(this, groups), new(this, groups), new(this, groups));
    }

    public ClassBook Book { get; }

    /// <summary>In the order in which everything is built.</summary>
    internal ImmutableArray<Item> Items { get; }

    /// <summary>Everything that is wrong with the book as a plant.</summary>
    public DiagnosticList Found { get; }

    internal CircuitDraft Circuits { get; }

    internal FeederDraft Feeders { get; }

    internal GearDraft Gear { get; }

    public PlanScope Scope { get; } = new();

    internal List<Signal> Signals { get; } = [];

    internal List<SlotInfo> Slots { get; } = [];

    internal List<Binding> Bindings { get; } = [];

    internal List<SwitchRule> Switches { get; } = [];

    internal List<PulseRule> Pulses { get; } = [];

    internal SortedDictionary<string, StartRule> Starts { get; } = new(StringComparer.Ordinal);

    internal IReadOnlyList<NetworkBuilder> Networks => _networks;

    internal IEnumerable<IReadOnlyList<string>> AmountNames => _amountNames;

    /// <summary>What each network is called: by the systems whose stores are in it.</summary>
    internal IEnumerable<string> NetworkNames => _systems.Select(s => string.Join(" and ", s));

    /// <summary>What ties each item to networks and slots.</summary>
    internal IEnumerable<ItemTies> Ties => _tiesOf.Values.Concat(ResolverTies);

    /// <summary>The same of circuits, feeders and running gear.</summary>
    internal IEnumerable<ItemTies> ResolverTies => Circuits.Parts.Select(p => p.Ties).Concat(Feeders.Parts.Select(p => p.Ties)).Concat(Gear.Parts.Select(p => p.Ties));

    /// <summary>What solves circuits, feeders and running gear: once everything is built.</summary>
    internal IEnumerable<Resolver> Resolvers()
    {
        foreach ((ItemTies item, ItemTies of) in _readBy)
        {
            of.Reads.UnionWith(item.Reads);
        }

        return [.. Circuits.Parts.Select(p => p.Build()).OfType<Resolver>(), .. Feeders.Parts.Select(p => p.Build()).OfType<Resolver>(), .. Gear.Parts.Select(p => p.Build()).OfType<Resolver>()];
    }

    /// <summary>Whatever the item that is being built reads, a resolver reads.</summary>
    internal void ReadBy(ItemTies resolver) => _readBy.Add((_ties, resolver));

    internal IReadOnlyDictionary<string, ItemPlan> Plans => _items;

    /// <summary>From here on it is an item's parts that are built.</summary>
    internal void Begin(Item item)
    {
        if (!_tiesOf.TryGetValue(item.Name, out _ties!))
        {
            _tiesOf[item.Name] = _ties = new();
        }
    }

    /// <summary>The number of the network in which a store is worked out; made when first asked for.</summary>
    /// <param name="store">The store, or an item whose inside is one.</param>
    /// <param name="fluid">What it holds.</param>
    public int NetworkOf(Item store, Fluid fluid)
    {
        ArgumentNullException.ThrowIfNull(store);
        StoreGroup group = _groups.Of(store, fluid);
        if (!_networkOf.TryGetValue(group, out int index))
        {
            index = _networks.Count;
            _networkOf[group] = index;
            _networks.Add(new());
            _amountNames.Add([]);
            _systems.Add(new(StringComparer.Ordinal));
        }

        _systems[index].Add(store.System ?? group.Fluid.ToString().ToLowerInvariant());
        return index;
    }

    /// <summary>A network of an item's own system, once all stores are there; null where nothing of it is stored.</summary>
    internal int? NetworkOfSystem(Item item)
    {
        foreach (Fluid fluid in Enum.GetValues<Fluid>())
        {
            if (_networkOf.TryGetValue(_groups.Of(item, fluid), out int index))
            {
                return index;
            }
        }

        return null;
    }

    public NetworkBuilder Network(int index) => _networks[index];

    /// <summary>Notes the names of a store's amounts, in order, for snapshots: call right after adding a store.</summary>
    public void NameAmounts(int network, params ReadOnlySpan<string> names) => _amountNames[network].AddRange(names);

    public void AddStore(string name, StoreEnd end) => _stores[name] = end;

    /// <summary>The end a path names, or null after an error. <c>outside</c> is one boundary a network, made by the kinds.</summary>
    public StoreEnd? FindEnd(Item path, PortReference? reference, string which)
    {
        if (reference is null)
        {
            Found.Error("P001", path.Span, $"`{path.Name}` has no `{which}`", $"write `{which}: NAME OF A STORE, PORT`");
            return null;
        }

        if (!_stores.TryGetValue(reference.Item, out StoreEnd? end))
        {
            Found.Error("P002", reference.Span, $"`{reference.Item}` is not a store that `{path.Name}` can end at", Nearest.DidYouMean(reference.Item, _stores.Keys));
            return null;
        }

        if (end.Holds == StoreSort.Heat != (KindLibrary.Find(path.Kind.Name)?.PassesHeat ?? false))
        {
            Found.Error(
                "P055",
                reference.Span,
                $"heat and what flows do not mix: `{path.Name}` cannot end at `{reference.Item}`",
                end.Holds == StoreSort.Heat ? "join a thermal mass by a heat exchanger or a heat source" : "name a thermal mass");
            return null;
        }

        if (reference.Port is null)
        {
            return end;
        }

        if (end.Item is null || !end.Item.Ports.TryGetValue(reference.Port, out Port? port))
        {
            Found.Error("P003", reference.Span, $"`{reference.Item}` has no port `{reference.Port}`", Nearest.DidYouMean(reference.Port, end.Item?.Ports.Keys ?? []));
            return null;
        }

        return end with { Port = port };
    }

    /// <summary>Says while something is joined to the head of a hose, 1, or not, 0: called in the first pass by whatever can be coupled to it.</summary>
    public void JoinHead(Item hose, SlotFunction joined)
    {
        if (!_joinedHeads.TryGetValue(hose.Name, out List<(SlotFunction Joined, ItemTies By)>? all))
        {
            _joinedHeads[hose.Name] = all = [];
        }

        all.Add((joined, _ties));
    }

    /// <summary>How far the head of a hose stands open: all of it where nothing is joined to it.</summary>
    public SlotFunction HeadOpening(Item hose)
    {
        if (!_joinedHeads.TryGetValue(hose.Name, out List<(SlotFunction Joined, ItemTies By)>? all))
        {
            return _ => 1;
        }

        all.ForEach(j => _ties.Reads.UnionWith(j.By.Reads));
        SlotFunction[] joined = [.. all.Select(j => j.Joined)];
        return joined is [var only] ? s => 1 - only(s) : s => Math.Max(0, 1 - Sum(joined, s));
    }

    /// <summary>Says that while a slot is set, another item does what a path is for: called in the first pass.</summary>
    public void SwapBy(Item path, Slot slot) => SwapsOf(path).Add(slot);

    /// <summary>The slots of which any, set, has another item do what a path is for; complete after the first pass.</summary>
    public List<Slot> SwapsOf(Item path)
    {
        if (!_swaps.TryGetValue(path.Name, out List<Slot>? slots))
        {
            _swaps[path.Name] = slots = [];
        }

        _ties.Reads.UnionWith(slots.Select(s => s.Index));
        return slots;
    }

    private static double Sum(SlotFunction[] parts, ReadOnlySpan<double> slots)
    {
        double sum = 0;
        foreach (SlotFunction part in parts)
        {
            sum += part(slots);
        }

        return sum;
    }

    public StoreEnd? FindStore(string name) => _stores.GetValueOrDefault(name);

    /// <summary>A slot by name; made with its start value when first asked for.</summary>
    public Slot SlotNamed(string name, double start = 0)
    {
        if (!_slotOf.TryGetValue(name, out Slot slot))
        {
            slot = new(Slots.Count);
            _slotOf[name] = slot;
            Slots.Add(new(name, start));
        }

        _ties.Reads.Add(slot.Index);
        return slot;
    }

    /// <summary>The slot of an item's position; its value is an index into the item's positions. Formulas ask <c>open of supply valve</c>.</summary>
    public Slot PositionSlot(Item item)
    {
        string? standing = item.UsualPosition ?? item.Kind.UsualPosition;
        int usual = standing is null ? 0 : Math.Max(0, item.Positions.IndexOf(standing));
        Slot slot = SlotNamed($"position of {item.Name}", usual);
        ItemPlan plan = PlanOf(item);
        if (plan.Position is null)
        {
            Update(plan with { Position = slot, Jammed = SlotNamed($"jammed of {item.Name}") });
            Starts[item.Name] = new(item.Name, Dimension.One, -1, default, null, slot, item.Positions);
            for (int i = 0; i < item.Positions.Length; i++)
            {
                Name($"{item.Positions[i]} of {item.Name}", Dimension.One, new PositionSignal(slot, i), isCondition: true);
            }
        }

        return slot;
    }

    /// <summary>Says that the item that is being built reads slots, by their indices, through a signal.</summary>
    internal void Reads(IEnumerable<int> slots) => _ties.Reads.UnionWith(slots);

    /// <summary>Whether a slot, by its index, is where a control stands.</summary>
    internal bool IsPosition(int slot) => _items.Values.Any(i => i.Position is { } position && position.Index == slot);

    public ItemPlan PlanOf(Item item) => _items.TryGetValue(item.Name, out ItemPlan? plan) ? plan : _items[item.Name] = new(item);

    public void Update(ItemPlan plan) => _items[plan.Item.Name] = plan;

    /// <summary>Declares a fault: one slot for each of its values, all zero while it is not there.</summary>
    /// <param name="item">Whose fault.</param>
    /// <param name="fault">As in the kind's sheet.</param>
    /// <param name="values">Names of its values with what they are where a situation says nothing, SI.</param>
    public ImmutableArray<Slot> Fault(Item item, string fault, params ReadOnlySpan<(string Name, double Usual)> values)
    {
        ImmutableArray<FaultValue>.Builder slots = ImmutableArray.CreateBuilder<FaultValue>();
        foreach ((string name, double usual) in values)
        {
            slots.Add(new(name, SlotNamed($"{fault} {name} of {item.Name}"), usual));
        }

        ItemPlan plan = PlanOf(item);
        Update(plan with { Faults = plan.Faults.SetItem(fault, slots.ToImmutable()) });
        return [.. slots.Select(s => s.Slot)];
    }

    /// <summary>Says by which numbers the values of a fault can call something, so that no other number is taken; one of them is usual.</summary>
    public void KnowFault(Item item, string fault, ImmutableArray<double> numbers)
    {
        ItemPlan plan = PlanOf(item);
        Update(plan with { Faults = plan.Faults.SetItem(fault, [.. plan.Faults[fault].Select((v, i) => v with { Known = numbers, Usual = numbers.Contains(v.Usual) ? v.Usual : numbers[Math.Min(i, numbers.Length - 1)] })]) });
    }

    /// <summary>Declares a fault that several items have together: whichever it is put on, all of them have it.</summary>
    /// <returns>Its slot, zero while it is not there.</returns>
    public Slot SharedFault(Item item, string fault, string slotName)
    {
        Slot slot = SlotNamed(slotName);
        ItemPlan plan = PlanOf(item);
        Update(plan with { Faults = plan.Faults.SetItem(fault, [new("", slot, 1)]) });
        return slot;
    }

    /// <summary>The fault that holds a control where it stands.</summary>
    public void JamFault(Item item)
    {
        PositionSlot(item);
        ItemPlan plan = PlanOf(item);
        Update(plan with { Faults = plan.Faults.SetItem("stuck", [new("", plan.Jammed!.Value, 1)]) });
    }

    /// <summary>What an instrument shows before its faults; gives it the faults that every instrument has.</summary>
    /// <param name="item">The instrument.</param>
    /// <param name="shown">SI.</param>
    /// <param name="biasFault">Name of the fault that adds to what it shows.</param>
    public void ShowOn(Item item, Signal shown, string biasFault = "bias")
    {
        Slot bias = Fault(item, biasFault, ("error", 0))[0];
        Slot stuck = Fault(item, "stuck", ("", 1))[0];
        Update(PlanOf(item) with { Shown = shown, Bias = bias, Stuck = stuck, Held = SlotNamed($"held of {item.Name}") });
    }

    /// <summary>Gives a signal a name in formulas: <c>volume of forward compartment</c>.</summary>
    public void Name(string name, Dimension dimension, Signal signal, bool isCondition = false)
    {
        Scope.Add(name, dimension, Signals.Count, isCondition);
        Signals.Add(signal);
    }

    /// <summary>An input of a network that follows from the slots.</summary>
    public Input Bind(int network, SlotFunction value)
    {
        Input input = _networks[network].AddInput(0);
        Steer(new(network, input, -1, value));
        return input;
    }

    /// <summary>Lets a parameter of a network follow from the slots.</summary>
    public void BindParameter(int network, int parameter, SlotFunction value) => Steer(new(network, default, parameter, value));

    public void AddSwitch(SwitchRule rule)
    {
        ArgumentNullException.ThrowIfNull(rule);
        Switches.Add(rule);
        _ties.Switches.Add(rule);
        _ties.Sets.Add(rule.Sets.Index);
    }

    public void AddPulse(PulseRule rule)
    {
        ArgumentNullException.ThrowIfNull(rule);
        Pulses.Add(rule);
        _ties.Sets.Add(rule.Sets.Index);
    }

    public void AddStart(StartRule rule) => Starts[rule.Name] = rule;

    /// <summary>Lets another amount begin with a starting value that is there already.</summary>
    /// <param name="name">The starting value: <c>pressure of brake pipe</c>.</param>
    /// <param name="network">Of the amount.</param>
    /// <param name="amount">What begins with it.</param>
    /// <param name="toAmount">Amount from the value given (SI).</param>
    public void StartWith(string name, int network, Amount amount, Func<double, double> toAmount)
    {
        if (Starts.TryGetValue(name, out StartRule? rule))
        {
            Starts[name] = rule with { Also = [.. rule.Also, (network, amount, toAmount)] };
        }
    }

    private void Steer(Binding binding)
    {
        Bindings.Add(binding);
        _ties.Bindings.Add(binding);
        _ties.Steers.Add(binding.Network);
    }

    /// <summary>Reads a formula of the book in the names of the vehicle that says it; null after an error.</summary>
    public Formula? Read(string text, Span span, FormulaKind expected, Vehicle vehicle) =>
        FormulaParser.Parse(text, span, VehicleScope.Of(vehicle, Scope), Found, expected);
}
