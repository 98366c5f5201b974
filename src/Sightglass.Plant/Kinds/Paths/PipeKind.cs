using Sightglass.Basics.Quantities;
using Sightglass.Book.Kinds;

namespace Sightglass.Plant.Kinds.Paths;

/// <summary>A long line with friction.</summary>
public sealed partial class PipeKind : KindBuilder
{
    public override KindSheet Sheet { get; } = new()
    {
        Name = "pipe",
        Purpose = "A line long enough for its friction to matter.",
        Details = """
            A liquid: Δp = (fL/D + ΣK)·ρV²/2 with f after Colebrook, laminar below. A gas: at constant temperature, with f of a rough wall, choking at its end where it
            would. Source: White, Fluid Mechanics, ch. 6 (from memory); Crane TP-410 for the gas (read in a public library's documentation).
            """,
        Role = KindRole.Path,
        Symbol = "pipe",
        Parameters =
        [
            Parameter.Needed("length", Dimension.Metre, "Of the line.", "1 cm", "1000 m"),
            Parameter.Needed("diameter", Dimension.Metre, "Inside.", "1 mm", "1 m"),
            Parameter.Of("roughness", Dimension.Metre, "Of the wall.", "0.045 mm", "0 mm", "5 mm"),
            Parameter.Of("fittings", Dimension.One, "Sum of loss coefficients.", "0", "0", "1000"),
            Parameter.Of("density", Dimension.Density, "Of the liquid.", "840 kg/m^3", "500 kg/m^3", "2000 kg/m^3"),
            Parameter.Of("viscosity", Dimension.KinematicViscosity, "Of the liquid.", "3 mm^2/s", "0.1 mm^2/s", "1000 mm^2/s"),
        ],
        Quantities = [PathSheet.Flow],
    };
}
