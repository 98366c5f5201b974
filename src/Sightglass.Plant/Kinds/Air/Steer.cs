using Sightglass.Basics.Quantities;
using Sightglass.Book.Kinds;
using Sightglass.Book.Model;
using Sightglass.Network.Compile;
using Sightglass.Network.Laws.Common;
using Sightglass.Network.Laws.Gas;
using Sightglass.Plant.Kinds.Common;
using Sightglass.Plant.Kinds.Paths;
using Sightglass.Plant.Plans;

namespace Sightglass.Plant.Kinds.Air;

/// <summary>What valves that pressures steer have in common: their openings, their balance, their faults.</summary>
internal static class Steer
{
    /// <summary>Any pressure a target may take, Pa absolute.</summary>
    public const double Highest = 1e8;

    public static readonly KindParameter Exhaust =
        Parameter.Of("exhaust diameter", Dimension.Metre, "Of its exhaust to the outside; without one it only supplies.", least: "0.1 mm", most: "200 mm");

    public static readonly KindParameter Width =
        Parameter.Of("width", Dimension.Pressure, "Pressure difference from beginning to open to fully open.", "2 psi", "0.1 psi", "50 psi");

    public static readonly KindFault Sticks = new("stuck", "It neither supplies nor exhausts.", []);

    public static readonly KindFault Passes =
        new("passes", "Shut, its supply still lets a share through.", [Parameter.Of("share", Dimension.One, "Of the open flow.", "1 %", "0.01 %", "100 %")]);

    /// <summary>How far a set pressure or the pressure followed is missed.</summary>
    public static readonly KindFault Drift =
        new("drift", "It holds another pressure than it should.", [Parameter.Of("error", Dimension.Pressure, "Added to what it should hold.", "5 psi", "-100 psi", "100 psi")]);

    /// <summary>Pa from beginning to open to fully open.</summary>
    public static double WidthOf(Item item) => item.Get("width");

    /// <summary>The sheet of the exhaust's opening, or null where there is none.</summary>
    public static double[]? ExhaustOf(Item item) =>
        item.Find("exhaust diameter") is { } d ? GasPaths.OfDiameter(d, item.Get("discharge coefficient")) : null;

    /// <summary>1 while the item named by <c>cut out by</c> stands in its first position or tells nothing, or where none is named.</summary>
    public static SlotFunction CutIn(PlanBuilder plan, Item item)
    {
        if (!item.Parameters.TryGetValue("cut out by", out ParameterValue? by) || by.Names.Length == 0)
        {
            return _ => 1;
        }

        if (ChooserOf(plan, by) is not { } chooser)
        {
            plan.Found.Error("P021", by.Span, $"`{by.Text}` cannot cut `{item.Name}` out", "name an item with positions: in its first one the valve works; or a relay");
            return _ => 1;
        }

        return s => s[chooser.Index] < 0.5 ? 1 : 0;
    }

    /// <summary>The slot of an item that chooses between two ways: below a half while it stands in its first position, or tells nothing. Null where it can choose nothing.</summary>
    public static Slot? ChooserOf(PlanBuilder plan, ParameterValue named)
    {
        if (named.Names is not [var name, ..] || !plan.Book.Items.TryGetValue(name, out Item? item))
        {
            return null;
        }

        return item.Kind.Role == KindRole.Signal ? Told.By(plan, item) : item.Positions.IsDefaultOrEmpty ? null : plan.PositionSlot(item);
    }

    public static readonly KindParameter CutOutBy =
        Parameter.Item("cut out by", "A handle with positions: the valve works while it stands in its first one and is shut in the others. Or a relay: shut while it is picked up.");

    /// <summary>Builds the supply and, where there is one, the exhaust of a valve that holds the pressure of its second end.</summary>
    /// <param name="plan">Where it is built.</param>
    /// <param name="item">The valve.</param>
    /// <param name="set">Part of the target that comes from slots, Pa absolute.</param>
    /// <param name="first">A pilot and its part in the target.</param>
    /// <param name="second">Another pilot and its part.</param>
    /// <param name="least">Least target, Pa absolute.</param>
    /// <param name="greatest">Greatest target, Pa absolute.</param>
    /// <returns>The supply, or null after an error.</returns>
    public static PathHandle? Hold(
        PlanBuilder plan, Item item, SlotFunction set, (StoreEnd? End, double Part) first, (StoreEnd? End, double Part) second, double least, double greatest)
    {
        Slot stuck = plan.Fault(item, "stuck", ("", 1))[0];
        Slot passes = plan.Fault(item, "passes", ("share", 0.01))[0];
        Slot drift = plan.Fault(item, "drift", ("error", 34_474))[0];
        SlotFunction cutIn = CutIn(plan, item);
        if (GasPaths.Component(plan, item) is not { } supply || Join.Ends(plan, item) is not var (from, to))
        {
            return null;
        }

        double Set(ReadOnlySpan<double> s) => set(s) + s[drift.Index];
        double Works(ReadOnlySpan<double> s) => cutIn(s) * (1 - s[stuck.Index]);
        Amount sensed = to.Store.First;
        Amount[] pilots = [sensed, (first.End ?? to).Store.First, (second.End ?? to).Store.First];
        double width = WidthOf(item);
        PathHandle path = GasPaths.Between<GasServo>(
            plan, item.Name, from, to, GasServo.ParametersOf(supply, width, 0, first.Part, second.Part, least, greatest),
            n => [plan.Bind(n, Set), plan.Bind(n, Works), plan.Bind(n, s => s[passes.Index])], pilots);
        if (ExhaustOf(item) is { } exhaust)
        {
            StoreEnd outside = Join.Outside(plan, $"exhaust of {item.Name}", to);
            PathHandle gone = GasPaths.Between<GasServo>(
                plan, $"exhaust of {item.Name}", to, outside, GasServo.ParametersOf(exhaust, -width, Band(width), first.Part, second.Part, least, greatest),
                n => [plan.Bind(n, Set), plan.Bind(n, Works), plan.Bind(n, _ => 0)], pilots);
            plan.Name($"exhaust of {item.Name}", Dimension.VolumeFlow, new Signals.FlowSignal(to.Network, gone, 1 / FreeAir.Density));
        }
        else
        {
            plan.Name($"exhaust of {item.Name}", Dimension.VolumeFlow, new Signals.ConstantSignal(0));
        }

        plan.Name($"flow of {item.Name}", Dimension.VolumeFlow, new Signals.FlowSignal(from.Network, path, 1 / FreeAir.Density));
        return path;
    }

    /// <summary>Between supplying and exhausting lies a band in which the valve does neither: a quarter of the width.</summary>
    private static double Band(double width) => width / 4;

    /// <summary>The pressure a handle sets, Pa absolute; null after an error.</summary>
    public static SlotFunction? SetBy(PlanBuilder plan, Item item)
    {
        if (item.Find("set") is { } fixedAt)
        {
            double absolute = fixedAt + Physical.Atmosphere;
            return _ => absolute;
        }

        if (ByPosition.Of(plan, item, "set by", "pressures") is not { } table)
        {
            return null;
        }

        return s => Physical.Atmosphere + table(s);
    }
}
