using Sightglass.Basics.Quantities;
using Sightglass.Book.Kinds;

namespace Sightglass.Plant.Kinds.Paths;

/// <summary>A valve with a handle.</summary>
public sealed class HandValveKind : ValveLikeKind
{
    public override KindSheet Sheet { get; } = new()
    {
        Name = "hand valve",
        Purpose = "A valve that a person opens and closes.",
        Details = "Open, it is an orifice; closed, it is tight unless it passes. Source as for the orifice.",
        Role = KindRole.Path,
        Symbol = "valve",
        Positions = ["closed", "open"],
        Parameters = [.. PathSheet.Opening],
        Quantities = [PathSheet.Flow],
        Faults =
        [
            new("stuck", "It does not move from where it stands.", []),
            new("passes", "Closed, it still lets a share through.", [Parameter.Of("share", Dimension.One, "Of the open flow.", "5 %", "0.1 %", "100 %")]),
        ],
    };
}
