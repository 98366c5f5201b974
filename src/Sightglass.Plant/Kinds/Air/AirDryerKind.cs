using Sightglass.Basics.Quantities;
using Sightglass.Book.Kinds;
using Sightglass.Book.Model;
using Sightglass.Network.Compile;
using Sightglass.Network.Laws.Common;
using Sightglass.Network.Laws.Gas;
using Sightglass.Plant.Kinds.Common;
using Sightglass.Plant.Kinds.Paths;
using Sightglass.Plant.Plans;
using Sightglass.Plant.Signals;

namespace Sightglass.Plant.Kinds.Air;

/// <summary>A dryer with two towers that take turns.</summary>
public sealed class AirDryerKind : KindBuilder
{
    public override KindSheet Sheet { get; } = new()
    {
        Name = "air dryer",
        Purpose = "Takes water out of the air in two towers that take turns: one dries while a part of the dry air blows through the other and out.",
        Details = """
            A gas filter as to its drop. While it works, dry air leaves behind it through the purge hole; the towers change after each time of work given. Stuck on one tower its beads fill:
            what passes is as wet as before by 1 − e^(−t/τ). Source: ISO 6358 for the hole; the rest is common practice, no source.
            """,
        Medium = "main",
        Role = KindRole.Path,
        Symbol = "filter",
        Parameters =
        [
            Parameter.Needed("flow", Dimension.VolumeFlow, "At which the drop is given.", "0.01 L/min", "100 m^3/min"),
            Parameter.Needed("drop", Dimension.Pressure, "When clean, at that flow.", "1 Pa", "10 bar"),
            Parameter.Needed("purge diameter", Dimension.Metre, "Of the hole through which dry air blows through the resting tower.", "0.1 mm", "20 mm"),
            Parameter.Of("changes every", Dimension.Second, "Time of work after which the towers change.", "60 s", "5 s", "1 h"),
            Parameter.Of("wet after", Dimension.Second, "Time after which one tower alone no longer dries.", "1 h", "1 min", "100 h"),
            Parameter.Item("works with", "The governor with whose compressor it works; always where there is none."),
        ],
        Quantities =
        [
            PathSheet.Flow,
            new("purge", Dimension.VolumeFlow, "Free air that it blows out."),
            new("wet", Dimension.One, "Share of the water that passes: 0 dry, 1 as wet as before."),
            new("second tower", Dimension.One, "The second tower dries.", IsCondition: true),
        ],
        Faults =
        [
            new("stuck", "The towers no longer change.", []),
            new("purge stays open", "Its purge valve does not shut: it blows always.", [Parameter.Of("diameter", Dimension.Metre, "Of the opening.", "6 mm", "0.5 mm", "30 mm")]),
            new("blocked", "Broken beads multiply the drop.", [Parameter.Of("factor", Dimension.One, "Drop over the clean drop.", "20", "1", "10000")]),
        ],
    };

    public override void Connect(PlanBuilder plan, Item item)
    {
        Slot stuck = plan.Fault(item, "stuck", ("", 1))[0];
        Slot open = plan.Fault(item, "purge stays open", ("diameter", 0.006))[0];
        Slot blocked = plan.Fault(item, "blocked", ("factor", 20))[0];
        SlotFunction? works = item.Parameters.ContainsKey("works with") ? Told.Share(plan, item, "works with") : _ => 1;
        if (works is null || Join.Ends(plan, item) is not var (_, to))
        {
            return;
        }

        new GasPaths().Filter(plan, item, s => Math.Max(0, s[blocked.Index] - 1));
        double purge = item.Get("purge diameter");
        string name = $"purge of {item.Name}";
        PathHandle blown = GasPaths.Between<GasIso6358>(
            plan, name, to, Join.Outside(plan, name, to), GasPaths.OfDiameter(purge), n => [plan.Bind(n, s => Math.Max(works(s), s[open.Index] * s[open.Index] / (purge * purge)))]);
        plan.Name(name, Dimension.VolumeFlow, new FlowSignal(to.Network, blown, 1 / FreeAir.Density));
        TakeTurns(plan, item, to.Network, works, stuck);
        Amount wet = LagNumber.Add(plan, to.Network, $"wet of {item.Name}", Lag.Follower(item.Get("wet after")), s => s[stuck.Index]);
        plan.Name($"wet of {item.Name}", Dimension.One, new PotentialSignal(to.Network, wet));
    }

    /// <summary>A counter goes up while the first tower dries and down while the second does.</summary>
    private static void TakeTurns(PlanBuilder plan, Item item, int network, SlotFunction works, Slot stuck)
    {
        Slot second = plan.SlotNamed($"second tower of {item.Name}");
        Amount turn = LagNumber.Add(
            plan, network, $"turn of {item.Name}", Lag.Counter(item.Get("changes every")), s => s[stuck.Index] > 0.5 ? 0 : works(s) * (s[second.Index] > 0.5 ? -1 : 1));
        plan.Name($"second tower of {item.Name}", Dimension.One, new SlotSignal(second, 1, -0.5), isCondition: true);
        plan.AddSwitch(new($"{item.Name} changes to its second tower.", network, new PotentialSignal(network, turn, 1, -1), s => s[second.Index] < 0.5, second, new ConstantSignal(1)));
        plan.AddSwitch(new($"{item.Name} changes to its first tower.", network, new PotentialSignal(network, turn, -1), s => s[second.Index] > 0.5, second, new ConstantSignal(0)));
    }
}
