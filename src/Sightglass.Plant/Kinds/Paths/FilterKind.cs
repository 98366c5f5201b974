using Sightglass.Basics.Quantities;
using Sightglass.Book.Kinds;

namespace Sightglass.Plant.Kinds.Paths;

/// <summary>A strainer or filter.</summary>
public sealed partial class FilterKind : KindBuilder
{
    public override KindSheet Sheet { get; } = new()
    {
        Name = "filter",
        Purpose = "Holds dirt back at the price of a pressure drop.",
        Details = "Seven tenths of the drop grow with the flow and the rest with its square; dirt multiplies it. Source: Forchheimer, from memory. A gas: as an opening that has the drop at the flow of free air, at 130 psi; dirt multiplies the drop.",
        Role = KindRole.Path,
        Symbol = "filter",
        Parameters =
        [
            Parameter.Needed("flow", Dimension.VolumeFlow, "At which the drop is given.", "0.01 L/min", "10 m^3/min"),
            Parameter.Needed("drop", Dimension.Pressure, "When clean, at that flow.", "1 Pa", "50 bar"),
            Parameter.Of("density", Dimension.Density, "Of the liquid.", "840 kg/m^3", "500 kg/m^3", "2000 kg/m^3"),
        ],
        Quantities = [PathSheet.Flow],
        Faults = [new("dirt", "Dirt multiplies the drop.", [Parameter.Of("factor", Dimension.One, "Drop over the clean drop.", "5", "1", "10000")])],
    };
}
