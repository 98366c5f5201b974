using Sightglass.Book.Kinds;

namespace Sightglass.Plant.Kinds.Fuel;

/// <summary>An emergency cut-off that falls shut when tripped and is latched open by hand.</summary>
public sealed class CutOffValveKind : ValveLikeKind
{
    public override KindSheet Sheet { get; } = new()
    {
        Name = "cut-off valve",
        Purpose = "Falls shut when one of its buttons is pushed, and stays shut until a person latches it open.",
        Details = "As a hand valve; the fault `tripped` shuts it without a button.",
        Medium = "fuel",
        Role = KindRole.Path,
        Symbol = "cut-off",
        Positions = ["tripped", "open"],
        Parameters = [.. PathSheet.Opening, Parameter.Items("tripped by", "Buttons that trip it, where they do not say so themselves.")],
        Quantities = [PathSheet.Flow],
        Faults =
        [
            new("stuck", "It does not move from where it stands.", []),
            new("tripped", "It fell shut by itself.", []),
        ],
    };
}
