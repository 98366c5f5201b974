using Sightglass.Basics.Quantities;
using Sightglass.Book.Kinds;
using Sightglass.Book.Model;
using Sightglass.Plant.Plans;

namespace Sightglass.Plant.Kinds.Air;

/// <summary>A stretch of air pipe between paths.</summary>
public sealed class AirLineKind : KindBuilder
{
    public override KindSheet Sheet { get; } = new()
    {
        Name = "air line",
        Purpose = "A stretch of air pipe between paths: it holds air and loses no pressure.",
        Details = "p·V = m·R·T at 20 °C. What a long pipe loses is said by a `pipe` between two of them. Source: ideal gas law.",
        Medium = "main",
        Role = KindRole.Store,
        Symbol = "line",
        Parameters =
        [
            Parameter.Of("volume", Dimension.Volume, "Inside; or give length and diameter.", least: "1 mL", most: "10 m^3"),
            Parameter.Of("length", Dimension.Metre, "Of the pipe.", least: "1 cm", most: "2000 m"),
            Parameter.Of("diameter", Dimension.Metre, "Inside.", least: "1 mm", most: "1 m"),
            AirSheet.StartPressure,
        ],
        Quantities = AirSheet.Quantities,
        Faults = [AirSheet.Leak],
    };

    public override Fluid? Holds => Fluid.Gas;

    public override void Declare(PlanBuilder plan, Item item)
    {
        double? volume = item.Find("volume")
            ?? (item.Find("length") is { } length && item.Find("diameter") is { } diameter ? length * Math.PI * diameter * diameter / 4 : null);
        if (volume is null)
        {
            plan.Found.Error("P019", item.Span, $"`{item.Name}` has no size", "write `volume: 2 L`, or `length: 3 m` and `diameter: 32 mm`");
            return;
        }

        GasStore.Declare(plan, item, volume.Value, exponent: 1);
    }

    public override void Connect(PlanBuilder plan, Item item) => GasStore.Leak(plan, item);
}
