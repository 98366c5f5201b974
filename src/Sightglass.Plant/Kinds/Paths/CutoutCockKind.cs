using Sightglass.Basics.Quantities;
using Sightglass.Book.Kinds;
using Sightglass.Book.Model;
using Sightglass.Network.Laws.Gas;
using Sightglass.Plant.Kinds.Air;
using Sightglass.Plant.Plans;

namespace Sightglass.Plant.Kinds.Paths;

/// <summary>A cock that cuts a part of the air system out and, where it vents, empties that part.</summary>
public sealed class CutoutCockKind : ValveLikeKind
{
    private const string VentPlugged = "vent plugged";

    public override KindSheet Sheet { get; } = new()
    {
        Name = "cutout cock",
        Purpose = "Cuts a part of the air system in or out; a venting one lets the air of the part cut out go.",
        Details = "Open (cut in), an orifice between its ends; closed (cut out) and venting, an orifice from its second end to the outside. Source as for the orifice.",
        Role = KindRole.Path,
        Symbol = "valve",
        Positions = ["closed", "open"],
        UsualPosition = "open",
        Parameters =
        [
            .. PathSheet.Opening,
            Parameter.Of("vent diameter", Dimension.Metre, "Of the hole through which it vents what is behind it; without one it does not vent.", least: "0.1 mm", most: "50 mm"),
        ],
        Quantities = [PathSheet.Flow],
        Faults =
        [
            new("stuck", "It does not move from where it stands.", []),
            new(VentPlugged, "It vents nothing: what it cuts out keeps its air.", []),
            new("passes", "Closed, it still lets a share through.", [Parameter.Of("share", Dimension.One, "Of the open flow.", "5 %", "0.1 %", "100 %")]),
        ],
    };

    public override void Connect(PlanBuilder plan, Item item)
    {
        base.Connect(plan, item);
        Slot position = plan.PositionSlot(item);
        Slot plugged = plan.Fault(item, VentPlugged, ("", 1))[0];
        if (item.Find("vent diameter") is { } d && Join.End(plan, item, item.To, "to", item.From) is { Holds: StoreSort.Gas } behind)
        {
            string name = $"vent of {item.Name}";
            GasPaths.Between<GasIso6358>(
                plan, name, behind, Join.Outside(plan, name, behind), GasPaths.OfDiameter(d, item.Get("discharge coefficient")),
                n => [plan.Bind(n, s => s[position.Index] > 0.5 || s[plugged.Index] > 0.5 ? 0 : 1)]);
        }
    }
}
