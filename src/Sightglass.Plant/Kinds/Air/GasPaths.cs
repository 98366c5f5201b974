using Sightglass.Basics.Numbers;
using Sightglass.Basics.Quantities;
using Sightglass.Book.Model;
using Sightglass.Network.Compile;
using Sightglass.Network.Laws;
using Sightglass.Network.Laws.Common;
using Sightglass.Network.Laws.Gas;
using Sightglass.Network.Laws.Liquid;
using Sightglass.Plant.Kinds.Paths;
using Sightglass.Plant.Plans;
using Sightglass.Plant.Signals;

namespace Sightglass.Plant.Kinds.Air;

/// <summary>The paths of compressed air.</summary>
internal sealed class GasPaths : IJoin
{
    /// <summary>Critical pressure ratio of a sharp-edged opening (A2-01: 0.528).</summary>
    private const double Critical = 0.5282817877;

    /// <summary>
    /// Share of the choked flow below which a passage is linear: a pressure difference of a forty-thousandth, 0.004 psi. A root as steep as the law's own would join two volumes
    /// so firmly that long steps lost more digits than the kernel allows.
    /// </summary>
    private const double Rounding = 1e-2;

    /// <summary>Loss coefficients of a sharp entry (0.5) and an exit (1); White, Fluid Mechanics, ch. 6, from memory.</summary>
    private const double EntryAndExit = 1.5;

    private const double Ln10 = 2.302585092994046;

    /// <summary>Least relative roughness that counts: a drawn tube.</summary>
    private const double Smoothest = 5e-5;

    /// <summary>Pressure at which a filter's flow and drop are given, Pa over the atmosphere: 130 psi.</summary>
    private const double FilterPressure = 8.963e5;

    public void Opening(PlanBuilder plan, Item item, SlotFunction share)
    {
        if (Component(plan, item) is { } law)
        {
            Add<GasIso6358>(plan, item, law, network => [plan.Bind(network, share)]);
        }
    }

    public void CheckValve(PlanBuilder plan, Item item, double opensAt, double width, SlotFunction lifts, SlotFunction passes)
    {
        if (Component(plan, item) is { } law)
        {
            Add<GasCheckValve>(plan, item, GasCheckValve.ParametersOf(law, opensAt, width), network => [plan.Bind(network, lifts), plan.Bind(network, passes)]);
        }
    }

    public void Pipe(PlanBuilder plan, Item item)
    {
        double diameter = item.Get("diameter");
        double friction = RoughFriction(item.Get("roughness") / diameter);
        double[] law = GasPipe.ParametersOf(diameter, item.Get("length"), friction, Physical.AirGasConstant * FreeAir.Temperature, item.Get("fittings") + EntryAndExit, Rounding);
        Add<GasPassage>(plan, item, law, network => [plan.Bind(network, _ => 1)]);
    }

    /// <summary>As an opening that has the drop given at the flow given, working at 130 psi.</summary>
    public void Filter(PlanBuilder plan, Item item, SlotFunction dirt)
    {
        double before = FilterPressure + Physical.Atmosphere;
        double flow = item.Get("flow") * FreeAir.Density;
        double share = Math.Min(1, item.Get("drop") / before / (1 - Critical));
        double perPascal = flow / (before * Math.Sqrt(share * (2 - share)));
        Add<GasIso6358>(plan, item, [perPascal, 1 / (1 - Critical), Rounding], network => [plan.Bind(network, s => 1 / Math.Sqrt(1 + dirt(s)))]);
    }

    /// <summary>The sheet of an opening given by area or diameter; null after an error.</summary>
    public static double[]? Component(PlanBuilder plan, Item item)
    {
        return PathSheet.AreaOf(plan, item) is { } area ? OfArea(item.Get("discharge coefficient"), area) : null;
    }

    /// <summary>Darcy's f where the wall's roughness rules: 1/√f = −2·log₁₀(ε/3.7D), the rough limit of Colebrook's formula (White, ch. 6, from memory).</summary>
    private static double RoughFriction(double roughness)
    {
        double root = -2 * Portable.Log(new Scalar(Math.Max(roughness, Smoothest) / 3.7)).V / Ln10;
        return 1 / (root * root);
    }

    /// <summary>The sheet of a round hole.</summary>
    /// <param name="diameter">m.</param>
    /// <param name="discharge">Share of the ideal flow.</param>
    public static double[] OfDiameter(double diameter, double discharge = LiquidOrifice.SharpEdged) => OfArea(discharge, Math.PI * diameter * diameter / 4);

    /// <summary>The sheet of a sharp-edged opening.</summary>
    private static double[] OfArea(double discharge, double area) =>
        GasIso6358.ParametersOf(GasIso6358.ConductanceOf(discharge, area), Critical, FreeAir.Temperature, Rounding);

    /// <summary>Adds the path of an item between its two ends and names its flow.</summary>
    public static PathHandle? Add<TLaw>(PlanBuilder plan, Item item, double[] law, Func<int, Input[]> inputs, params ReadOnlySpan<Amount> pilots)
        where TLaw : struct, ILaw
    {
        if (Join.Ends(plan, item) is not var (from, to))
        {
            return null;
        }

        PathHandle path = Between<TLaw>(plan, item.Name, from, to, law, inputs, pilots);
        plan.Name($"flow of {item.Name}", Dimension.VolumeFlow, new FlowSignal(from.Network, path, 1 / FreeAir.Density));
        return path;
    }

    /// <summary>Adds a path between two ends, with what steers it.</summary>
    public static PathHandle Between<TLaw>(PlanBuilder plan, string name, StoreEnd from, StoreEnd to, double[] law, Func<int, Input[]> inputs, params ReadOnlySpan<Amount> pilots)
        where TLaw : struct, ILaw =>
        plan.Network(from.Network).AddPath<TLaw>(
            name, [from.Store.First, to.Store.First, .. pilots], [new(from.Store.First, to.Store.First)], law, inputs(from.Network));
}
