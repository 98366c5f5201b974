using Sightglass.Basics.Quantities;
using Sightglass.Book.Kinds;

namespace Sightglass.Plant.Kinds.Fuel;

/// <summary>A fixed opening.</summary>
public sealed partial class OrificeKind : KindBuilder
{
    public override KindSheet Sheet { get; } = new()
    {
        Name = "orifice",
        Purpose = "A fixed opening between two stores, or to the outside.",
        Details = "Volume flow = Cd·A·√(2Δp/ρ), made linear near zero. Source: orifice equation (White, Fluid Mechanics, from memory).",
        Medium = "fuel",
        Role = KindRole.Path,
        Symbol = "orifice",
        Parameters = [.. PathSheet.Opening],
        Quantities = [PathSheet.Flow],
    };
}
