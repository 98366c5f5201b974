using Sightglass.Basics.Quantities;
using Sightglass.Book.Kinds;
using Sightglass.Plant.Kinds.Paths;

namespace Sightglass.Plant.Kinds.Fuel;

/// <summary>A gear pump.</summary>
public sealed partial class DisplacementPumpKind : KindBuilder
{
    public override KindSheet Sheet { get; } = new()
    {
        Name = "displacement pump",
        Purpose = "Moves a volume each turn, less what slips back through its gaps.",
        Details = "Q = Q₀·speed − G·Δp. With air before it it moves air as well and loses its suction. Source: gear pump with linear slip, derived.",
        Medium = "fuel",
        Role = KindRole.Path,
        Symbol = "pump",
        Parameters =
        [
            Parameter.Needed("flow", Dimension.VolumeFlow, "At full speed without a pressure difference.", "0.01 L/min", "10 m^3/min"),
            Parameter.Of("slip", Dimension.One, "Share of the flow lost at the relief pressure.", "5 %", "0 %", "100 %"),
            Parameter.Of("relief", Dimension.Pressure, "Difference at which its relief lets all of it back.", "10 bar", "0.1 bar", "1000 bar"),
            Parameter.Item("driven by", "A switch or an engine that drives it, at full speed in any position but its first, or a transmitter that tells its speed; always on where there is none."),
        ],
        Quantities = [PathSheet.Flow],
        Faults = [new("worn", "More slips back.", [Parameter.Of("share", Dimension.One, "Of the flow lost at the relief pressure, besides.", "40 %", "1 %", "95 %")])],
    };
}
