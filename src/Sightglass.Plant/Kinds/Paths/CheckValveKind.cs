using Sightglass.Basics.Quantities;
using Sightglass.Book.Kinds;

namespace Sightglass.Plant.Kinds.Paths;

/// <summary>A valve that opens by pressure, one way.</summary>
public sealed partial class CheckValveKind : KindBuilder
{
    public override KindSheet Sheet { get; } = new()
    {
        Name = "check valve",
        Purpose = "Opens one way when the pressure difference passes what its spring holds; also a relief or a pressure regulator.",
        Details = "An orifice whose opening rises from 0 to 1 over a fifth of the opening pressure, at least 2 kPa. Source as for the orifice; the rise is our choice.",
        Role = KindRole.Path,
        Symbol = "check",
        Parameters = [.. PathSheet.Opening, Parameter.Of("opens at", Dimension.Pressure, "Pressure difference at which it begins to open.", "2 kPa", "0 Pa", "10 MPa")],
        Quantities = [PathSheet.Flow],
        Faults =
        [
            new("stuck shut", "It does not open.", []),
            new("passes", "Shut, it still lets a share through, both ways.", [Parameter.Of("share", Dimension.One, "Of the open flow.", "5 %", "0.1 %", "100 %")]),
        ],
    };
}
