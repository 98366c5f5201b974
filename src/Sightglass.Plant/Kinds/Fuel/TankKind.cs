using Sightglass.Basics.Quantities;
using Sightglass.Book.Kinds;
using Sightglass.Plant.Gear;
using Sightglass.Plant.Plans;

namespace Sightglass.Plant.Kinds.Fuel;

/// <summary>A vented tank of liquid.</summary>
public sealed partial class TankKind : KindBuilder
{
    public const string Name = "tank";

    public override KindSheet Sheet { get; } = new()
    {
        Name = Name,
        Purpose = "Holds liquid under a vented surface.",
        Details = """
            The level follows from what is in it and its shape; on a grade or a cant the surface stays level and the floor tilts under it. Above the roof the level
            goes on rising in the vent, and what passes the vent's top is spilled and counted. The floor's middle stands at the item's position. Height of a port is
            measured from the floor, its x and y in the class's axes. Source: geometry and hydrostatics.
            """,
        Medium = "fuel",
        Role = KindRole.Store,
        Symbol = "tank",
        Parameters =
        [
            Parameter.Choice("shape", "Shape of the tank.", "prismatic", "prismatic", "upright cylinder", "lying cylinder", "dip table"),
            Parameter.Of("floor area", Dimension.Area, "Area of a prismatic tank's floor; or give length and width.", least: "1 cm^2", most: "100 m^2"),
            Parameter.Of("length", Dimension.Metre, "Along the machine.", least: "1 cm", most: "50 m"),
            Parameter.Of("width", Dimension.Metre, "Across the machine.", least: "1 cm", most: "10 m"),
            Parameter.Of("radius", Dimension.Metre, "Of a cylinder.", least: "1 cm", most: "5 m"),
            Parameter.Of("depth", Dimension.Metre, "From floor to roof; a lying cylinder has its diameter.", least: "1 cm", most: "20 m"),
            Parameter.Table("dip table", "Height of the level against volume, from the floor up, 2 to 24 rows.", "height: length", "volume: volume"),
            Parameter.Of("density", Dimension.Density, "Of the liquid.", "840 kg/m^3", "500 kg/m^3", "2000 kg/m^3"),
            Parameter.Of("vent area", Dimension.Area, "Opening of the vent, through which a full tank overflows.", "8 cm^2", "0.1 cm^2", "1 m^2"),
            Parameter.Of("vent height", Dimension.Metre, "Top of the vent above the roof.", "100 mm", "50 mm", "5 m"),
            Parameter.Item(GearDraft.LiesOn, "The body or the like that carries what is in it; where nothing is written its weight counts nowhere."),
        ],
        Quantities =
        [
            new("volume", Dimension.Volume, "Liquid in it."),
            new("level", Dimension.Metre, "Height of the surface above the middle of the floor."),
            new("mass", Dimension.Kilogram, "Liquid in it."),
            new("fill", Dimension.One, "Share of the volume below the roof."),
            new("leak flow", Dimension.VolumeFlow, "What leaks out now."),
            new("overflow", Dimension.VolumeFlow, "What passes the vent now."),
            new("spilled", Dimension.Volume, "What leaked and overflowed since the start."),
        ],
        Faults =
        [
            new("leak", "A hole in the wall or the floor; liquid runs to the ground.",
            [
                Parameter.Needed("diameter", Dimension.Metre, "Of the hole.", "0.1 mm", "200 mm"),
                Parameter.Of("height", Dimension.Metre, "Of the hole above the floor.", "0 mm", "0 mm", "20 m"),
            ]),
        ],
    };

    public override Fluid? Holds => Fluid.Liquid;
}
