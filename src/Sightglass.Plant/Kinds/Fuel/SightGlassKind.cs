using Sightglass.Basics.Quantities;
using Sightglass.Book.Kinds;

namespace Sightglass.Plant.Kinds.Fuel;

/// <summary>A glass at a tank's side.</summary>
public sealed partial class SightGlassKind : KindBuilder
{
    public override KindSheet Sheet { get; } = new()
    {
        Name = "sight glass",
        Purpose = "Shows the level of one tank where the glass stands.",
        Details = "On a slope it shows the surface at its own place, not in the middle. Below its bottom and above its top it shows its ends.",
        Medium = "fuel",
        Role = KindRole.Indication,
        Symbol = "sight glass",
        Parameters =
        [
            Parameter.Item("of", "The tank it stands at.", required: true),
            Parameter.Of("bottom", Dimension.Metre, "Lowest level it shows, above the floor.", "0 mm", "0 mm", "20 m"),
            Parameter.Needed("top", Dimension.Metre, "Highest level it shows, above the floor.", "1 mm", "20 m"),
        ],
        Faults =
        [
            new("dirty", "Dirt hides the line: it is read wrong by so much.", [Parameter.Of("error", Dimension.Metre, "Added to what is read.", "50 mm", "-1 m", "1 m")]),
            new("stuck", "A blocked cock: the level in the glass does not move.", []),
        ],
    };
}
