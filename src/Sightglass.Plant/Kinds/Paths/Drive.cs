using Sightglass.Basics.Diagnostics;
using Sightglass.Book.Kinds;
using Sightglass.Book.Model;
using Sightglass.Plant.Plans;
using Sightglass.Plant.Signals;

namespace Sightglass.Plant.Kinds.Paths;

/// <summary>How fast a pump or a compressor turns, by what drives it.</summary>
internal static class Drive
{
    /// <summary>Full speed while what drives it is in any position but its first, or as a transmitter tells; always where nothing is named. A share, 0…1.</summary>
    public static SlotFunction Speed(PlanBuilder plan, Item item)
    {
        if (!item.Parameters.TryGetValue("driven by", out ParameterValue? driver) || driver.Names.Length == 0)
        {
            return _ => 1;
        }

        if (plan.Book.Items.TryGetValue(driver.Names[0], out Item? by) && by.Kind.Role == KindRole.Signal)
        {
            return Told.Share(plan, item, "driven by")!;
        }

        if (by is null || by.Positions.IsDefaultOrEmpty)
        {
            plan.Found.Error("P006", driver.Span, $"`{driver.Names[0]}` cannot drive `{item.Name}`", Nearest.DidYouMean(driver.Names[0], plan.Book.Items.Keys) ?? "name a switch, an engine or a transmitter");
            return _ => 0;
        }

        Slot position = plan.PositionSlot(by);
        return s => s[position.Index] > 0.5 ? 1 : 0;
    }

    /// <summary>The same as a signal; null after an error, which <see cref="Speed"/> tells.</summary>
    public static Signal? Turning(PlanBuilder plan, Item item) =>
        !item.Parameters.TryGetValue("driven by", out ParameterValue? driver) || driver.Names.Length == 0 ? new ConstantSignal(1)
        : !plan.Book.Items.TryGetValue(driver.Names[0], out Item? by) ? null
        : by.Kind.Role == KindRole.Signal ? new SlotSignal(Told.By(plan, by))
        : by.Positions.IsDefaultOrEmpty ? null
        : new AllSignal([new SlotSignal(plan.PositionSlot(by)), new ConstantSignal(1)]);
}
