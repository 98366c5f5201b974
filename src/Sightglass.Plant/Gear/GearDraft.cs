using Sightglass.Book.Model;
using Sightglass.Network.Springs;
using Sightglass.Plant.Circuits;
using Sightglass.Plant.Kinds;
using Sightglass.Plant.Plans;

namespace Sightglass.Plant.Gear;

/// <summary>What kinds of running gear are built into: one part for all masses that springs join.</summary>
internal sealed class GearDraft
{
    /// <summary>Parameter by which something says whose weight it adds to.</summary>
    public const string LiesOn = "lies on";

    private readonly PlanBuilder _plan;
    private readonly WireGroups _groups;
    private readonly Dictionary<string, GearPart> _parts = new(StringComparer.Ordinal);
    private readonly List<GearPart> _inOrder = [];
    private readonly Lazy<ILookup<string, Item>> _lying;

    public GearDraft(PlanBuilder plan, WireGroups groups)
    {
        (_plan, _groups) = (plan, groups);
        _lying = new(() => plan.Items.Where(i => i.Parameters.ContainsKey(LiesOn)).ToLookup(i => i.Parameters[LiesOn].Names is [var on, ..] ? on : "", StringComparer.Ordinal));
    }

    public IReadOnlyList<GearPart> Parts => _inOrder;

    /// <summary>Adds a mass: called in the first pass.</summary>
    public GearMass Add(Item item, Freedoms freedoms) => PartOf(item.Name).Add(item, freedoms);

    /// <summary>The part that a mass is of. What the item that is being built reads, the part reads.</summary>
    public GearPart PartOf(string mass)
    {
        string root = _groups.Of(mass);
        if (!_parts.TryGetValue(root, out GearPart? part))
        {
            _parts[root] = part = new(mass);
            _inOrder.Add(part);
        }

        _plan.ReadBy(part.Ties);
        return part;
    }

    /// <summary>The mass that an item's parameter names; null after an error.</summary>
    /// <param name="does">What it should do for the item: <c>carry</c>.</param>
    public GearMass? Named(Item item, string parameter, string does)
    {
        ParameterValue value = item.Parameters[parameter];
        string name = value.Names is [var first, ..] ? first : value.Text;
        if (_plan.Book.Items.TryGetValue(name, out Item? mass) && PartOf(name).Find(name) is { } found && (parameter != "carries" || mass.Kind.Name != "axle"))
        {
            return found;
        }

        _plan.Found.Error("P046", value.Span, $"`{name}` is nothing that could {does} `{item.Name}`", "name an item of the kind `body`, `truck frame`, `equaliser` or `axle`; an axle stands on the rails and on nothing else");
        return null;
    }

    /// <summary>Lays on a mass its own weight and that of all that says it lies on it.</summary>
    public void LoadUp(GearMass mass, double kilograms)
    {
        GearPart part = PartOf(mass.Item.Name);
        part.Weigh(mass, mass.X, mass.Y, _ => kilograms);
        foreach (Item item in _lying.Value[mass.Item.Name])
        {
            if (KindLibrary.Find(item.Kind.Name)?.Weighs(_plan, item) is { } weighs)
            {
                part.Weigh(mass, item.Position?.X ?? mass.X, item.Position?.Y ?? mass.Y, weighs);
            }
        }
    }

    /// <summary>Says what does not stand, once everything is built.</summary>
    public void Check()
    {
        foreach (ParameterValue on in _lying.Value.SelectMany(g => g).Select(i => i.Parameters[LiesOn]))
        {
            string name = on.Names is [var first, ..] ? first : on.Text;
            if (!_parts.Values.Any(p => p.Find(name) is not null))
            {
                _plan.Found.Error("P047", on.Span, $"nothing can lie on `{name}`", "name an item of the kind `body`, `truck frame`, `equaliser` or `axle`");
            }
        }

        _inOrder.ForEach(p => p.Check(_plan));
    }
}
