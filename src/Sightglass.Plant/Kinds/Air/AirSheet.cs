using System.Collections.Immutable;
using Sightglass.Basics.Quantities;
using Sightglass.Book.Kinds;

namespace Sightglass.Plant.Kinds.Air;

/// <summary>What the sheets of air volumes have in common.</summary>
internal static class AirSheet
{
    public static readonly KindParameter StartPressure =
        Parameter.Of("start pressure", Dimension.Pressure, "Above the atmosphere, when a situation begins that does not say otherwise.", "0 psi", "-14 psi", "500 psi");

    public static readonly ImmutableArray<KindQuantity> Quantities =
    [
        new("pressure", Dimension.Pressure, "Above the atmosphere."),
        new("air", Dimension.Volume, "Free air in it: as the volume it has at the pressure of the atmosphere and 20 °C."),
        new("leak flow", Dimension.VolumeFlow, "Free air that leaks out now."),
    ];

    public static readonly KindFault Leak =
        new("leak", "A hole or a bad joint; air blows to the outside.", [Parameter.Needed("diameter", Dimension.Metre, "Of a hole that leaks as much.", "0.01 mm", "100 mm")]);
}
