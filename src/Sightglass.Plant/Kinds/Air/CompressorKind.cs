using Sightglass.Basics.Quantities;
using Sightglass.Book.Kinds;
using Sightglass.Book.Model;
using Sightglass.Network.Compile;
using Sightglass.Network.Laws.Gas;
using Sightglass.Plant.Kinds.Paths;
using Sightglass.Plant.Plans;
using Sightglass.Plant.Signals;

namespace Sightglass.Plant.Kinds.Air;

/// <summary>A piston compressor.</summary>
public sealed class CompressorKind : KindBuilder
{
    public const string Name = "compressor";

    public override KindSheet Sheet { get; } = new()
    {
        Name = Name,
        Purpose = "Presses air of the atmosphere into a store, while something drives it and its governor has it loaded.",
        Details = """
            ṁ = ρ·Q·speed·(1 + c − c·p₂/p₁): the more the pressure, the less of each stroke is fresh air, by the dead volume c. Its own valves let nothing back. Driven
            but unloaded, it turns and presses nothing. Source: clearance volumetric efficiency (any text of thermodynamics, from memory).
            """,
        Medium = "main",
        Role = KindRole.Path,
        Symbol = "compressor",
        Ports = [new("to", "Where the air goes.")],
        Parameters =
        [
            Parameter.Needed("displacement", Dimension.VolumeFlow, "Swept by its first stage at full speed.", "1 L/min", "100 m^3/min"),
            Parameter.Of("clearance", Dimension.One, "Dead volume over swept volume, as of one stage over the whole pressure.", "2 %", "0 %", "20 %"),
            Parameter.Item("driven by", "A switch or an engine that drives it, at full speed in any position but its first, or a transmitter that tells its speed; always on where there is none."),
            Parameter.Item("loaded by", "Its governor; always loaded where there is none."),
        ],
        Quantities = [PathSheet.Flow],
        Faults =
        [
            new("worn", "It presses less.", [Parameter.Of("share", Dimension.One, "Of what it pressed when new, lost.", "40 %", "1 %", "99 %")]),
            new("does not pump", "It turns and presses nothing.", []),
        ],
    };

    public override void Connect(PlanBuilder plan, Item item)
    {
        if (Join.End(plan, item, item.To, "to", null) is not { } to)
        {
            return;
        }

        if (Turning(plan, item) is not { } turns)
        {
            return;
        }

        StoreEnd outside = Join.Outside(plan, $"drawn by {item.Name}", to);
        PathHandle path = GasPaths.Between<GasPump>(
            plan, item.Name, outside, to, LawOf(item), n => [plan.Bind(n, turns)]);
        plan.Name($"flow of {item.Name}", Dimension.VolumeFlow, new FlowSignal(to.Network, path, 1 / FreeAir.Density));
    }

    /// <summary>Its share of full speed while it presses, worn or not; null after an error.</summary>
    internal static SlotFunction? Turning(PlanBuilder plan, Item item)
    {
        Slot worn = plan.Fault(item, "worn", ("share", 0.4))[0];
        Slot broken = plan.Fault(item, "does not pump", ("", 1))[0];
        SlotFunction speed = Drive.Speed(plan, item);
        SlotFunction? loaded = item.Parameters.ContainsKey("loaded by") ? Told.Share(plan, item, "loaded by") : _ => 1;
        return loaded is null ? null : s => speed(s) * loaded(s) * (1 - s[worn.Index]) * (1 - s[broken.Index]);
    }

    internal static double[] LawOf(Item item) => GasPump.ParametersOf(item.Get("displacement"), item.Get("clearance"), FreeAir.Temperature);
}
