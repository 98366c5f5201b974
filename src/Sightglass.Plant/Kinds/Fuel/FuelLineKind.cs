using Sightglass.Basics.Quantities;
using Sightglass.Book.Kinds;
using Sightglass.Plant.Plans;

namespace Sightglass.Plant.Kinds.Fuel;

/// <summary>A short stretch of line between paths.</summary>
public sealed partial class FuelLineKind : KindBuilder
{
    public override KindSheet Sheet { get; } = new()
    {
        Name = "fuel line",
        Purpose = "A stretch of line, a header or a rail, full of liquid and perhaps of air.",
        Details = """
            Liquid and air are both counted. Where a pickup draws air, the line fills with it and the pump loses its prime; where liquid is drawn out and nothing follows,
            a void opens at low pressure. Source: conservation of both, ideal gas law.
            """,
        Medium = "fuel",
        Role = KindRole.Store,
        Symbol = "line",
        Parameters =
        [
            Parameter.Needed("volume", Dimension.Volume, "Inside.", "10 mL", "1000 L"),
            Parameter.Of("elasticity", Dimension.One, "Share by which walls and liquid give for each bar; hoses and small bubbles included.", "1 %", "0.01 %", "50 %"),
            Parameter.Of("start pressure", Dimension.Pressure, "Above the atmosphere, when a situation begins.", "5 kPa", "-90 kPa", "2000 kPa"),
            Parameter.Of("height", Dimension.Metre, "Above rail, where it has no position.", "0.4 m", "-5 m", "20 m"),
            Parameter.Of("density", Dimension.Density, "Of the liquid.", "840 kg/m^3", "500 kg/m^3", "2000 kg/m^3"),
        ],
        Quantities =
        [
            new("pressure", Dimension.Pressure, "Above the atmosphere."),
            new("air", Dimension.One, "Share of its volume that is air."),
            new("volume", Dimension.Volume, "Liquid in it."),
        ],
    };

    public override Fluid? Holds => Fluid.Liquid;
}
