using Sightglass.Basics.Diagnostics;
using Sightglass.Book.Model;
using Sightglass.Network.Compile;
using Sightglass.Network.Springs;
using Sightglass.Plant.Plans;
using Body = Sightglass.Network.Springs.Body;
using Spring = Sightglass.Network.Springs.Spring;

namespace Sightglass.Plant.Gear;

/// <summary>Masses that springs join, while they are put together: what lies on them, what carries them, and the slots that tell how they stand.</summary>
/// <param name="name">For messages.</param>
internal sealed class GearPart(string name)
{
    /// <summary>N that a kilogram presses with.</summary>
    public const double Gravity = 9.80665;

    private readonly SuspensionBuilder _draft = new();
    private readonly List<ResolverInput> _inputs = [];
    private readonly List<GearOutput> _outputs = [];
    private readonly Dictionary<string, GearMass> _masses = new(StringComparer.Ordinal);
    private readonly List<GearMass> _inOrder = [];

    /// <summary>What ties its items to slots, for leaving out what nobody asks about.</summary>
    public ItemTies Ties { get; } = new();

    public GearMass? Find(string mass) => _masses.GetValueOrDefault(mass);

    public GearMass Add(Item item, Freedoms freedoms)
    {
        Body body = _draft.AddBody(item.Name, item.Position?.X ?? 0, item.Position?.Y ?? 0, freedoms);
        GearMass mass = new(item, body, []);
        _masses[item.Name] = mass;
        _inOrder.Add(mass);
        return mass;
    }

    /// <summary>Lets a weight lie on a mass.</summary>
    /// <param name="x">m, in the train.</param>
    /// <param name="y">The same.</param>
    /// <param name="kilograms">From the slots.</param>
    public void Weigh(GearMass on, double x, double y, SlotFunction kilograms) => _draft.AddWeight(on.Body, x, y, Newtons(on.Item.Name, kilograms));

    /// <summary>Lets a weight lie on a mass where slots say.</summary>
    /// <param name="along">m behind its middle, as its own vehicle goes.</param>
    /// <param name="across">m to the right of it.</param>
    public void Weigh(GearMass on, SlotFunction kilograms, SlotFunction along, SlotFunction across)
    {
        double way = on.Way * Gravity;
        _draft.AddWeight(on.Body, on.X, on.Y, Newtons(on.Item.Name, kilograms));
        _draft.AddPitch(on.Body, Follow(on.Item.Name, s => way * kilograms(s) * along(s)));
        _draft.AddRoll(on.Body, Follow(on.Item.Name, s => way * kilograms(s) * across(s)));
    }

    /// <summary>A spring between two masses, or between one and the rail.</summary>
    /// <param name="stiffness">N/m.</param>
    /// <param name="left">Share of it that is still there; null for all of it.</param>
    /// <param name="gap">m by which it is short; null for nothing.</param>
    public Spring Join(string spring, GearMass upper, GearMass? lower, double x, double y, double stiffness, SlotFunction? left = null, SlotFunction? gap = null)
    {
        upper.Below.AddRange(lower is null ? [] : [lower]);
        return _draft.AddSpring(spring, upper.Body, lower?.Body, x, y, stiffness, factor: left is null ? null : Follow(spring, left), gap: gap is null ? null : Follow(spring, gap));
    }

    public void Tell(Slot slot, Func<SuspensionState, double> value)
    {
        _outputs.Add(new(slot, value));
        Ties.Sets.Add(slot.Index);
    }

    /// <summary>Says which of it nothing carries, stands on itself, or falls with everything as it is at the start.</summary>
    public void Check(PlanBuilder plan)
    {
        int before = plan.Found.Count(d => d.Severity == Severity.Error);
        foreach (GearMass mass in _inOrder)
        {
            if (mass.Item.Position is null && (_inOrder.Count > 1 || mass.Item.Kind.Name != "axle"))
            {
                plan.Found.Error("P050", mass.Item.Span, $"`{mass.Item.Name}` does not say where it is", "write `position: { x: …, y: …, z: … }`");
            }
            else if (mass.Item.Kind.Name != "axle" && mass.Below.Count == 0)
            {
                plan.Found.Error("P048", mass.Item.Span, $"nothing carries `{mass.Item.Name}`", $"write items of the kind `spring` with `carries: {mass.Item.Name}`");
            }
            else if (Reaches(mass, mass, []))
            {
                plan.Found.Error("P049", mass.Item.Span, $"`{mass.Item.Name}` stands on itself", "let springs go down from the body by way of the truck frames to the axles");
            }
        }

        if (plan.Found.Count(d => d.Severity == Severity.Error) == before)
        {
            CheckStands(plan);
        }
    }

    /// <summary>What works it out; null where nothing of it can be asked for.</summary>
    public GearResolver? Build() => _outputs.Count == 0 ? null : new(name, _draft.Build, [.. _inputs], [.. _outputs]);

    private static bool Reaches(GearMass from, GearMass wanted, HashSet<GearMass> seen) => from.Below.Any(b => b == wanted || (seen.Add(b) && Reaches(b, wanted, seen)));

    private void CheckStands(PlanBuilder plan)
    {
        double[] slots = [.. plan.Slots.Select(s => s.Start)];
        Suspension all = _draft.Build();
        SuspensionState state = all.NewState();
        all.Solve([.. _inputs.Select(i => i.Value!(slots))], state);
        foreach (StandFinding finding in all.FindingsOf(state).Where(f => f.Kind == StandFindingKind.Falls))
        {
            plan.Found.Error("P051", _masses[finding.Name].Item.Span, $"`{finding.Name}` falls over", "let springs stand at both of its sides and both of its ends, with its weight between them");
        }
    }

    private Input Newtons(string item, SlotFunction kilograms) => Follow(item, s => Gravity * kilograms(s));

    private Input Follow(string item, SlotFunction value)
    {
        _inputs.Add(new(value, null));
        return _draft.AddInput(item, 0);
    }
}
