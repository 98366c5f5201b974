using Sightglass.Basics.Quantities;
using Sightglass.Book.Kinds;
using Sightglass.Book.Model;
using Sightglass.Network.Laws.Common;
using Sightglass.Plant.Kinds.Paths;
using Sightglass.Plant.Plans;

namespace Sightglass.Plant.Kinds.Air;

/// <summary>A valve that holds the pressure behind it where it is set.</summary>
public sealed class RegulatingValveKind : KindBuilder
{
    public override KindSheet Sheet { get; } = new()
    {
        Name = "regulating valve",
        Purpose = "Holds the pressure behind it where it is set, by hand or for good: a reducing valve, the valve under a brake handle.",
        Details = """
            Supplies while the pressure behind it is below the set one and, where it has an exhaust, lets out while it is above; fully open at its width from there. Between
            the two lies a quarter of the width in which it does neither. Source: ISO 6358 for the openings; the balance is common practice, no source.
            """,
        Medium = "main",
        Role = KindRole.Path,
        Symbol = "regulator",
        Parameters =
        [
            .. PathSheet.Opening,
            Steer.Exhaust,
            Steer.Width,
            Parameter.Of("set", Dimension.Pressure, "The pressure held; or say what sets it.", least: "0 psi", most: "500 psi"),
            Parameter.Item("set by", "The handle that sets it."),
            new("pressures", ParameterType.ByPosition, Dimension.Pressure, "The pressure held in each of the handle's positions."),
            Steer.CutOutBy,
        ],
        Quantities = [PathSheet.Flow, new("exhaust", Dimension.VolumeFlow, "Free air that it lets out.")],
        Faults = [Steer.Sticks, Steer.Passes, Steer.Drift],
    };

    public override void Connect(PlanBuilder plan, Item item)
    {
        if (Steer.SetBy(plan, item) is { } set)
        {
            Steer.Hold(plan, item, set, default, default, Physical.Atmosphere, Steer.Highest);
        }
    }
}
