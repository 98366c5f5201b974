using Sightglass.Book.Kinds;

namespace Sightglass.Plant.Kinds.Paths;

/// <summary>A small cock to drain a tank to the outside.</summary>
public sealed class DrainCockKind : ValveLikeKind
{
    public override KindSheet Sheet { get; } = new()
    {
        Name = "drain cock",
        Purpose = "A small cock at the lowest point of a store.",
        Details = "As a hand valve. Source as for the orifice.",
        Role = KindRole.Path,
        Symbol = "valve",
        Positions = ["closed", "open"],
        Parameters = [.. PathSheet.Opening],
        Quantities = [PathSheet.Flow],
        Faults = [new("stuck", "It does not move from where it stands.", [])],
    };
}
