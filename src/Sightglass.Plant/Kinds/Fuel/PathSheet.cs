using System.Collections.Immutable;
using Sightglass.Basics.Quantities;
using Sightglass.Book.Kinds;

namespace Sightglass.Plant.Kinds.Fuel;

/// <summary>What the sheets of paths have in common.</summary>
internal static class PathSheet
{
    public static readonly KindQuantity Flow = new("flow", Dimension.VolumeFlow, "Liquid from its first end to its second.");

    /// <summary>An opening by area or by diameter.</summary>
    public static readonly ImmutableArray<KindParameter> Opening =
    [
        Parameter.Of("area", Dimension.Area, "Of the opening; or give a diameter.", least: "0.0001 mm^2", most: "10 m^2"),
        Parameter.Of("diameter", Dimension.Metre, "Of the opening.", least: "0.01 mm", most: "3 m"),
        Parameter.Of("discharge coefficient", Dimension.One, "Share of the ideal flow.", "0.62", "0.01", "1"),
        Parameter.Of("density", Dimension.Density, "Of the liquid.", "840 kg/m^3", "500 kg/m^3", "2000 kg/m^3"),
    ];
}
