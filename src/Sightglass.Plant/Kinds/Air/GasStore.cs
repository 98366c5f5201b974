using Sightglass.Basics.Numbers;
using Sightglass.Basics.Quantities;
using Sightglass.Book.Model;
using Sightglass.Network.Compile;
using Sightglass.Network.Laws.Common;
using Sightglass.Network.Laws.Gas;
using Sightglass.Network.Stores;
using Sightglass.Plant.Kinds.Paths;
using Sightglass.Plant.Plans;
using Sightglass.Plant.Signals;

namespace Sightglass.Plant.Kinds.Air;

/// <summary>What every volume of compressed air has: its amount, its pressure, where a situation may begin, a leak.</summary>
internal static class GasStore
{
    /// <summary>Range over which errors of a pressure are judged, Pa: 10 bar.</summary>
    public const double Span = 1e6;

    private const double NominalHole = 0.01;

    /// <summary>A volume that never changes.</summary>
    public static void Declare(PlanBuilder plan, Item item, double volume, double exponent)
    {
        int network = plan.NetworkOf(item, Fluid.Gas);
        double start = Physical.Atmosphere + item.Get("start pressure");
        double mass = volume * FreeAir.Density / Physical.Atmosphere;
        NetworkBuilder b = plan.Network(network);
        if (exponent > 1)
        {
            double[] sheet = PolytropicGasStore.ParametersOf(volume, Physical.Atmosphere, FreeAir.Temperature, exponent);
            double Amount(double p) => mass * Physical.Atmosphere * Portable.Pow(new Scalar(p / Physical.Atmosphere), new Scalar(1 / exponent)).V;
            Register(plan, item, network, b.AddStore<PolytropicGasStore>(item.Name, sheet, [Amount(start)], [Span]), Amount);
        }
        else
        {
            double[] sheet = LinearStore.IsothermalGas(volume, FreeAir.Temperature);
            Register(plan, item, network, b.AddStore<LinearStore>(item.Name, sheet, [mass * start], [Span]), p => mass * p);
        }
    }

    /// <summary>Makes a built store known: as an end of paths, by its quantities, as a start of situations.</summary>
    /// <param name="plan">Where it is built.</param>
    /// <param name="item">The volume.</param>
    /// <param name="network">Its network.</param>
    /// <param name="store">Its one amount.</param>
    /// <param name="amount">kg by absolute pressure, Pa.</param>
    public static void Register(PlanBuilder plan, Item item, int network, StoreHandle store, Func<double, double> amount)
    {
        plan.NameAmounts(network, item.Name);
        plan.AddStore(item.Name, new(network, store, item, null, item.Position?.Z ?? 0, StoreSort.Gas));
        plan.Name($"pressure of {item.Name}", Dimension.Pressure, new PotentialSignal(network, store.First, 1, -Physical.Atmosphere));
        plan.Name($"air of {item.Name}", Dimension.Volume, new AmountSignal(network, store.First, 1 / FreeAir.Density));
        plan.AddStart(new($"pressure of {item.Name}", Dimension.Pressure, network, store.First, p => amount(p + Physical.Atmosphere), default, []) { Least = -Physical.Atmosphere });
    }

    /// <summary>A small volume inside a valve that begins with the pressure of the pipe it belongs to; paths find it by its name.</summary>
    /// <param name="plan">Where it is built.</param>
    /// <param name="item">The valve.</param>
    /// <param name="name">Of the volume.</param>
    /// <param name="volume">m³.</param>
    /// <param name="pipe">The item whose start pressure it begins with, or null.</param>
    public static void DeclareChamber(PlanBuilder plan, Item item, string name, double volume, Item? pipe)
    {
        int network = plan.NetworkOf(pipe ?? item, Fluid.Gas);
        double mass = volume * FreeAir.Density / Physical.Atmosphere;
        double start = Physical.Atmosphere + (pipe?.Find("start pressure") ?? 0);
        StoreHandle store = plan.Network(network).AddStore<LinearStore>(name, LinearStore.IsothermalGas(volume, FreeAir.Temperature), [mass * start], [Span]);
        plan.NameAmounts(network, name);
        plan.AddStore(name, new(network, store, null, null, item.Position?.Z ?? 0, StoreSort.Gas));
    }

    /// <summary>Lets such a volume begin with whatever pressure a situation gives its pipe, and names its pressure.</summary>
    public static void StartChamber(PlanBuilder plan, StoreEnd chamber, double volume, StoreEnd pipe, string quantity)
    {
        double mass = volume * FreeAir.Density / Physical.Atmosphere;
        plan.StartWith($"pressure of {pipe.Item?.Name}", chamber.Network, chamber.Store.First, p => mass * (p + Physical.Atmosphere));
        plan.Name(quantity, Dimension.Pressure, new PotentialSignal(chamber.Network, chamber.Store.First, 1, -Physical.Atmosphere));
    }

    /// <summary>A hole of no size until the fault gives it one: appended always, so that its absence changes no bit.</summary>
    /// <param name="plan">Where it is built.</param>
    /// <param name="item">The volume.</param>
    /// <param name="burst">Square of the diameter of a second hole, m², which another fault opens; or null.</param>
    public static void Leak(PlanBuilder plan, Item item, SlotFunction? burst = null)
    {
        if (plan.FindStore(item.Name) is not { } end)
        {
            return;
        }

        Slot diameter = plan.Fault(item, "leak", ("diameter", 0.003))[0];
        StoreEnd outside = Join.Outside(plan, $"leaked of {item.Name}", end);
        double[] law = GasPaths.OfDiameter(NominalHole);
        PathHandle path = GasPaths.Between<GasIso6358>(
            plan, $"leak of {item.Name}", end, outside, law, n => [plan.Bind(n, s => ((s[diameter.Index] * s[diameter.Index]) + (burst?.Invoke(s) ?? 0)) / (NominalHole * NominalHole))]);
        plan.Name($"leak flow of {item.Name}", Dimension.VolumeFlow, new FlowSignal(end.Network, path, 1 / FreeAir.Density));
    }

    /// <summary>The item named by a parameter, or null.</summary>
    public static Item? ItemNamed(PlanBuilder plan, Item item, string parameter) =>
        item.Parameters.GetValueOrDefault(parameter) is { Names: [var name, ..] } ? plan.Book.Items.GetValueOrDefault(name) : null;

    /// <summary>The end of a store named by a parameter, such as what a governor senses; null after an error.</summary>
    public static StoreEnd? Named(PlanBuilder plan, Item item, string parameter)
    {
        ParameterValue? value = item.Parameters.GetValueOrDefault(parameter);
        string name = value is { Names: [var first, ..] } ? first : "";
        if (plan.FindStore(name) is { Holds: StoreSort.Gas } end)
        {
            return end;
        }

        plan.Found.Error("P018", value?.Span ?? item.Span, $"`{name}` holds no air that `{item.Name}` could sense", "name a reservoir, an air line or a brake cylinder");
        return null;
    }
}
