using System.Collections.Immutable;
using Sightglass.Basics.Formulas;
using Sightglass.Basics.Quantities;
using Sightglass.Book.Model;
using Sightglass.Network.Compile;
using Sightglass.Network.Laws.Common;
using Sightglass.Network.Laws.Liquid;
using Sightglass.Network.Laws.Liquid.Ends;
using Sightglass.Network.Stores;
using Sightglass.Plant.Kinds.Common;
using Sightglass.Plant.Kinds.ThreePhase;
using Sightglass.Plant.Plans;
using Sightglass.Plant.Signals;

namespace Sightglass.Plant.Kinds.Fuel;

public sealed partial class EngineKind
{
    /// <summary>The lag of its want of fuel has come this far when it stops: 1 − 1/e, after once the time given.</summary>
    private const double StopsAt = 0.6321205588285577;

    /// <summary>Width of the step by which pressure counts as too low, Pa.</summary>
    private const double Width = 2000;

    /// <summary>Share of air in its line at which injection fails (common practice, no source).</summary>
    private const double AirAtWhichItFails = 0.3;

    public override void Declare(PlanBuilder plan, Item item)
    {
        Slot running = plan.PositionSlot(item);
        plan.Name($"running of {item.Name}", Dimension.One, new SlotSignal(running, 1, -0.5), isCondition: true);
        plan.Fault(item, "seized", ("", 1));
    }

    public override void Connect(PlanBuilder plan, Item item)
    {
        if (plan.FindEnd(item, item.From, "from") is not { Holds: StoreSort.Line } rail)
        {
            plan.Found.Error("P007", item.From?.Span ?? item.Span, $"`{item.Name}` does not draw from a fuel line", "write `from: NAME OF A FUEL LINE`");
            return;
        }

        double density = item.Get("density");
        if (Demand(plan, item, density) is not { } demand)
        {
            return;
        }

        NetworkBuilder b = plan.Network(rail.Network);
        string burntName = $"burnt by {item.Name}";
        Amount burnt = b.AddBoundary<FixedStore>(burntName, [Physical.Atmosphere]).First;
        plan.NameAmounts(rail.Network, burntName);
        Slot running = plan.PositionSlot(item);
        PathHandle path = b.AddPath<MixedPath<LineEnd, LiquidDemand, AirEnd>>(
            item.Name,
            [rail.Store.First, rail.Store.Second, burnt],
            [new(rail.Store.First, burnt), new(rail.Store.Second, Amount.None)],
            MixedPath<LineEnd, LiquidDemand, AirEnd>.ParametersOf(
                LiquidDemand.ParametersOf(Physical.Atmosphere, 20_000), [0, LiquidAirLine.ResidualPressure], [0], density),
            [plan.Bind(rail.Network, s => s[running.Index] > 0.5 ? demand(s) : 0)]);
        plan.Name($"consumption of {item.Name}", Dimension.VolumeFlow, new FlowSignal(rail.Network, path, 1 / density));
        plan.Name($"burnt of {item.Name}", Dimension.Volume, new AmountSignal(rail.Network, burnt, 1 / density));
        StopWhenStarved(plan, item, rail, running);
    }

    /// <summary>In the third pass, when every name of the condition is there.</summary>
    public override void Indicate(PlanBuilder plan, Item item)
    {
        if (plan.FindStore(item.From?.Item ?? "") is not { Holds: StoreSort.Line } rail)
        {
            return; // told before
        }

        Slot running = plan.PositionSlot(item);
        Slot seized = plan.PlanOf(item).Faults["seized"][0].Slot;
        plan.AddSwitch(new($"{item.Name} seizes.", rail.Network, new SlotSignal(seized, 1, -0.5), s => s[running.Index] > 0.5, running, new ConstantSignal(0), Jumps: true));
        if (!item.Parameters.TryGetValue(StopsWhile, out ParameterValue? value) || plan.Read(value.Text, value.Span, FormulaKind.Condition, item.Vehicle) is not { } formula)
        {
            return;
        }

        if (plan.OneNetworkOf(formula, rail.Network) is not { } network)
        {
            plan.Found.Error("P015", value.Span, $"`{item.Name}` is stopped by what is not worked out together", "speak of relays and controls, or of the items of one system");
            return;
        }

        plan.AddSwitch(new($"{item.Name} is stopped.", network, new FormulaSignal(formula), s => s[running.Index] > 0.5, running, new ConstantSignal(0), Jumps: true));
    }

    private static void StopWhenStarved(PlanBuilder plan, Item item, StoreEnd rail, Slot running)
    {
        NetworkBuilder b = plan.Network(rail.Network);
        string name = $"want of {item.Name}";
        Amount want = b.AddStore<FollowerStore>(name, [], [0], [1]).First;
        plan.NameAmounts(rail.Network, name);
        double limit = Physical.Atmosphere + item.Get("stops below");
        b.AddPath<SupplyWant>(
            name,
            [rail.Store.First, rail.Store.Second, want],
            [new(Amount.None, want)],
            SupplyWant.ParametersOf(limit, Width, AirAtWhichItFails, item.Get("after")),
            []);
        plan.Name($"want of {item.Name}", Dimension.One, new PotentialSignal(rail.Network, want));
        plan.AddSwitch(new(
            $"{item.Name} stops for want of fuel.", rail.Network, new PotentialSignal(rail.Network, want, 1, -StopsAt), s => s[running.Index] > 0.5, running, new ConstantSignal(0)));
    }

    /// <summary>kg/s by the throttle's position and the head-end load; null after an error.</summary>
    private static SlotFunction? Demand(PlanBuilder plan, Item item, double density)
    {
        ImmutableSortedDictionary<string, double> map = item.Parameters["consumption"].ByPosition;
        double headEnd = item.Get("head-end consumption") * density;
        if (HeadEndLoad(plan, item) is not { } given || LeastDemand(plan, item) is not { } least)
        {
            return null;
        }

        if (!item.Parameters.TryGetValue("throttle", out ParameterValue? named) || named.Names.Length == 0
            || !plan.Book.Items.ContainsKey(named.Names[0]))
        {
            double only = map.Values.FirstOrDefault() * density;
            return s => only + (headEnd * given(s));
        }

        return ByPosition.Of(plan, item, "throttle", "consumption") is { } byPosition ? s => (Math.Max(byPosition(s), least(s)) * density) + (headEnd * given(s)) : null;
    }

    /// <summary>m³/s that it needs to keep the speed of its own source; null after an error.</summary>
    private static SlotFunction? LeastDemand(PlanBuilder plan, Item item) =>
        item.Parameters.TryGetValue("head-end source", out ParameterValue? named) && plan.Book.Items.TryGetValue(named.Text, out Item? source)
            ? ThreePhaseSourceKind.Burns(plan, source)
            : _ => 0;

    /// <summary>Share of the full head-end load: what a situation says, and what its own source gives; null after an error.</summary>
    private static SlotFunction? HeadEndLoad(PlanBuilder plan, Item item)
    {
        Slot said = plan.SlotNamed("head-end load");
        if (!item.Parameters.TryGetValue("head-end source", out ParameterValue? named))
        {
            return s => s[said.Index];
        }

        if (!plan.Book.Items.TryGetValue(named.Text, out Item? source) || source.Kind.Name != ThreePhaseSourceKind.Name)
        {
            plan.Found.Error("P044", named.Span, $"`{named.Text}` is no source that `{item.Name}` turns", "name an item of the kind `three-phase source`");
            return null;
        }

        Slot output = ThreePhaseSourceKind.Output(plan, source);
        double most = source.Get("power");
        return s => s[said.Index] + (Math.Max(0, s[output.Index]) / most);
    }
}
