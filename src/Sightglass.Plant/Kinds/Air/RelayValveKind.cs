using Sightglass.Basics.Quantities;
using Sightglass.Book.Kinds;
using Sightglass.Book.Model;
using Sightglass.Network.Laws.Common;
using Sightglass.Plant.Kinds.Paths;
using Sightglass.Plant.Plans;

namespace Sightglass.Plant.Kinds.Air;

/// <summary>A valve that repeats a pressure with more air.</summary>
public sealed class RelayValveKind : KindBuilder
{
    public override KindSheet Sheet { get; } = new()
    {
        Name = "relay valve",
        Purpose = "Gives the pipe behind it the pressure of a small volume that steers it, with as much air as that takes.",
        Details = """
            The pressure it holds is ratio·(pressure followed), over the atmosphere. It supplies, exhausts and laps as a regulating valve does. Source: ISO 6358 for
            the openings; the balance is common practice, no source.
            """,
        Medium = "brake",
        Role = KindRole.Path,
        Symbol = "relay",
        Parameters =
        [
            .. PathSheet.Opening,
            Steer.Exhaust,
            Steer.Width,
            Parameter.Item("follows", "The store whose pressure it repeats.", required: true),
            Parameter.Of("ratio", Dimension.One, "Pressure held over pressure followed, both over the atmosphere.", "1", "0.05", "20"),
            Steer.CutOutBy,
        ],
        Quantities = [PathSheet.Flow, new("exhaust", Dimension.VolumeFlow, "Free air that it lets out.")],
        Faults = [Steer.Sticks, Steer.Passes, Steer.Drift],
    };

    public override void Connect(PlanBuilder plan, Item item)
    {
        if (GasStore.Named(plan, item, "follows") is { } pilot)
        {
            double ratio = item.Get("ratio");
            Steer.Hold(plan, item, _ => Physical.Atmosphere * (1 - ratio), (pilot, ratio), default, Physical.Atmosphere, Steer.Highest);
        }
    }
}
