using Sightglass.Basics.Quantities;
using Sightglass.Book.Kinds;
using Sightglass.Plant.Kinds.Paths;

namespace Sightglass.Plant.Kinds.Fuel;

/// <summary>A port with an automatic shut-off.</summary>
public sealed partial class FillPortKind : KindBuilder
{
    public override KindSheet Sheet { get; } = new()
    {
        Name = "fill port",
        Purpose = "Lets a tank be filled from a nozzle and shuts by itself at a height.",
        Details = "While filling, the nozzle gives its flow; a float shuts it over the last 10 mm below its height. Source as for the orifice; the float's travel is common practice, no source.",
        Medium = "fuel",
        Role = KindRole.Path,
        Symbol = "fill",
        Positions = ["capped", "open", "filling"],
        Parameters =
        [
            Parameter.Of("area", Dimension.Area, "Of the port.", "15 cm^2", "1 mm^2", "1 m^2"),
            Parameter.Of("flow", Dimension.VolumeFlow, "Of the nozzle.", "300 US gal/min", "0.1 L/min", "10 m^3/min"),
            Parameter.Needed("closes at height", Dimension.Metre, "Of the level above the middle of the floor.", "1 cm", "20 m"),
            Parameter.Of("density", Dimension.Density, "Of the liquid.", "840 kg/m^3", "500 kg/m^3", "2000 kg/m^3"),
        ],
        Quantities = [PathSheet.Flow],
        Faults = [new("does not shut", "The float hangs: filling goes on.", [])],
    };
}
