using System.Collections.Immutable;
using Sightglass.Basics.Quantities;
using Sightglass.Book.Kinds;
using Sightglass.Book.Model;
using Sightglass.Plant.Plans;

namespace Sightglass.Plant.Kinds.Paths;

/// <summary>What the sheets of paths have in common.</summary>
internal static class PathSheet
{
    public static readonly KindQuantity Flow = new("flow", Dimension.VolumeFlow, "From its first end to its second; of a gas as free air.");

    /// <summary>An opening by area or by diameter.</summary>
    public static readonly ImmutableArray<KindParameter> Opening =
    [
        Parameter.Of("area", Dimension.Area, "Of the opening; or give a diameter.", least: "0.0001 mm^2", most: "10 m^2"),
        Parameter.Of("diameter", Dimension.Metre, "Of the opening.", least: "0.01 mm", most: "3 m"),
        Parameter.Of("discharge coefficient", Dimension.One, "Share of the ideal flow.", "0.62", "0.01", "1"),
        Parameter.Of("density", Dimension.Density, "Of the liquid; a gas has its own.", "840 kg/m^3", "500 kg/m^3", "2000 kg/m^3"),
    ];

    /// <summary>The area of an opening in m², written as such or by its diameter; null after an error.</summary>
    public static double? AreaOf(PlanBuilder plan, Item item)
    {
        double? area = item.Find("area") ?? (item.Find("diameter") is { } d ? Math.PI * d * d / 4 : null);
        if (area is null)
        {
            plan.Found.Error("P005", item.Span, $"`{item.Name}` has no opening", "write `area: 5 cm^2` or `diameter: 25 mm`");
        }

        return area;
    }
}
