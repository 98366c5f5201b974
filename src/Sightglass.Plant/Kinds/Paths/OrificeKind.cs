using Sightglass.Basics.Quantities;
using Sightglass.Book.Kinds;

namespace Sightglass.Plant.Kinds.Paths;

/// <summary>A fixed opening.</summary>
public sealed partial class OrificeKind : KindBuilder
{
    public override KindSheet Sheet { get; } = new()
    {
        Name = "orifice",
        Purpose = "A fixed opening between two stores, or to the outside.",
        Details = """
            A liquid: volume flow = Cd·A·√(2Δp/ρ), made linear near zero. A gas: with the sonic conductance of a sharp edge and the critical pressure
            ratio 0.528, at 20 °C. Source: orifice equation (White, Fluid Mechanics, from memory); ISO 6358 (formula read, constants from memory).
            """,
        Role = KindRole.Path,
        Symbol = "orifice",
        Parameters = [.. PathSheet.Opening],
        Quantities = [PathSheet.Flow],
    };
}
