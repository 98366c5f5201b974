using Sightglass.Basics.Quantities;
using Sightglass.Book.Kinds;
using Sightglass.Book.Model;
using Sightglass.Plant.Plans;

namespace Sightglass.Plant.Kinds.Air;

/// <summary>A cooler between a compressor and the vessel in which its water falls out.</summary>
public sealed class AirCoolerKind : KindBuilder
{
    public const string Name = "air cooler";

    private const string Clogged = "clogged";

    public override KindSheet Sheet { get; } = new()
    {
        Name = Name,
        Purpose = "Takes the heat of pressing out of a compressor's air before it comes into a reservoir.",
        Details = """
            Clean, the air leaves it as cold as it is outside. A reservoir says `cooled by` it: the warmer the air comes, the more of its water it keeps as vapour and carries on, by the saturation pressure at that temperature. Its heat has no mass of its own, and neither the pressure nor the amount of the air moves by it. Source: Dalton's law, derived.
            """,
        Faults = [new(Clogged, "Dust and oil between its fins.", [Parameter.Of("warmer", Dimension.Kelvin, "By how much the air leaves it warmer than it is outside.", "40 K", "1 K", "150 K")])],
    };

    public override void Declare(PlanBuilder plan, Item item) => Warmer(plan, item);

    /// <summary>K by which the air leaves it warmer than it is outside.</summary>
    internal static Slot Warmer(PlanBuilder plan, Item item) => plan.Fault(item, Clogged, ("warmer", 40))[0];
}
