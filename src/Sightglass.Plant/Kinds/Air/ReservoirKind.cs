using Sightglass.Basics.Quantities;
using Sightglass.Book.Kinds;
using Sightglass.Book.Model;
using Sightglass.Plant.Plans;

namespace Sightglass.Plant.Kinds.Air;

/// <summary>A vessel of compressed air.</summary>
public sealed class ReservoirKind : KindBuilder
{
    public override KindSheet Sheet { get; } = new()
    {
        Name = "reservoir",
        Purpose = "A vessel of compressed air.",
        Details = """
            p·V = m·R·T at 20 °C: it takes and gives heat as fast as it fills and empties. With an exponent above 1, p ∝ mⁿ: it warms as it fills (1.4: no heat
            passes the wall), at 20 °C with the pressure of the atmosphere. Filled by a compressor whose water it collects, it cools that air to the temperature outside: of x = 0.622·φe/(pₐ − φe)
            that each kg brings, 0.622·e/(p − e) stays vapour and the rest lies at its bottom until a drain blows it out. Valid while the air stays long enough to cool; what is carried on is not
            followed. Source: ideal gas law; polytropic change (any text of thermodynamics, from memory); Dalton's law with the Magnus form of Alduchov and Eskridge for e.
            """,
        Medium = "main",
        Role = KindRole.Store,
        Symbol = "reservoir",
        Parameters =
        [
            Parameter.Needed("volume", Dimension.Volume, "Inside.", "0.01 L", "100 m^3"),
            Parameter.Of("exponent", Dimension.One, "1 where its air keeps the wall's temperature, up to 1.4 where no heat passes.", "1", "1", "1.4"),
            AirSheet.StartPressure,
            .. Condensate.Parameters,
        ],
        Quantities = [.. AirSheet.Quantities, Condensate.Quantity],
        Faults = [AirSheet.Leak],
    };

    public override Fluid? Holds => Fluid.Gas;

    public override void Declare(PlanBuilder plan, Item item) => GasStore.Declare(plan, item, item.Get("volume"), item.Get("exponent"));

    public override void Connect(PlanBuilder plan, Item item)
    {
        GasStore.Leak(plan, item);
        Condensate.Connect(plan, item);
    }
}
