using Sightglass.Basics.Quantities;
using Sightglass.Book.Kinds;
using Sightglass.Book.Model;
using Sightglass.Network.Compile;
using Sightglass.Network.Phasors;
using Sightglass.Plant.Circuits;
using Sightglass.Plant.Feeders;
using Sightglass.Plant.Kinds.Electric;
using Sightglass.Plant.Plans;
using Sightglass.Plant.Signals;
using Keeping = Sightglass.Network.Phasors.LoadKind;

namespace Sightglass.Plant.Kinds.ThreePhase;

/// <summary>What takes three phases.</summary>
public sealed class ThreePhaseLoadKind : KindBuilder
{
    public const string Name = "three-phase load";
    private const string While = "draws while";
    private const string KeepsPower = "power";

    public override KindSheet Sheet { get; } = new()
    {
        Name = Name,
        Purpose = "Takes power from three phases: the heating, cooling and light of a car.",
        Details = """
            Between each two phases a third of it. It keeps its power as the voltage falls (motors, inverters), down to half of what it is made for, or its impedance (heaters). What of it is on at once is said by `share`. Source: loads of constant power and constant
            impedance (Kersting, Distribution System Modeling and Analysis, from memory). Motors that start take several times their current at a low power factor, as an impedance (IEEE 399, from memory: five to seven times for a motor alone): `inrush` says how many times that is for the whole load, how long, and after which delay
            its contactors close when its voltage has come back. A gap of less than a tenth of a second it rides through.
            """,
        Medium = "power",
        Role = KindRole.Path,
        Conducts = true,
        Alternates = true,
        Symbol = "load",
        Ports = [new("from", "The busbar that feeds it.")],
        Parameters =
        [
            Parameter.Needed("power", Dimension.Power, "What it takes with everything on.", "1 W", "100 MW"),
            Parameter.Of("power factor", Dimension.One, "Lagging.", "85 %", "1 %", "100 %"),
            Parameter.Of("rated voltage", Dimension.Voltage, "Between phases.", "480 V", "1 V", "50 kV"),
            Parameter.Of("share", Dimension.One, "What of it is on at once.", "100 %", "0 %", "100 %"),
            Parameter.Of("unlike", Dimension.One, "How much more than its third lies between the first two phases, and how much less between the last and the first.", "0 %", "0 %", "100 %"),
            Parameter.Choice("keeps", "What stays as the voltage falls.", KeepsPower, KeepsPower, "impedance"),
            Parameter.Of("works from", Dimension.One, "Share of its rated voltage that it needs.", "80 %", "0 %", "100 %"),
            .. ComingBack.Parameters,
            new(While, ParameterType.Formula, Dimension.One, "Where something switches it; always where nothing is written."),
        ],
        Quantities = [new("consumption", Dimension.Power, "What it takes."), new("working", Dimension.One, "It has the voltage that it needs and takes power.", IsCondition: true), new("starting", Dimension.One, "It takes the current with which it starts.", IsCondition: true)],
        Faults = [FeederSheet.Open, new("shorted", "Two of its phases touch.", [Parameter.Of("resistance", Dimension.Resistance, "Where they touch.", "20 mOhm", "1 mOhm", "100 Ohm")])],
    };

    public override void Declare(PlanBuilder plan, Item item)
    {
        Slot drawn = Drawn(plan, item);
        plan.Name($"consumption of {item.Name}", Dimension.Power, new SlotSignal(drawn));
        string bus = item.From is { IsItem: true } from ? from.Item : "";
        SlotSignal fed = new(FeederSheet.LineVolts(plan, bus), 1, -item.Get("works from") * item.Get("rated voltage"));
        SlotSignal whole = new(plan.Fault(item, "shorted", ("resistance", 0.02))[0], -1, 1e-9);
        plan.Name($"working of {item.Name}", Dimension.One, new AllSignal([fed, new SlotSignal(drawn, 1, -1), whole]), isCondition: true);
        plan.Name($"starting of {item.Name}", Dimension.One, new AllSignal([new SlotSignal(drawn, 1, -1), ComingBack.Applies(item) ? ComingBack.Starting(plan, item) : new ConstantSignal(-1)]), isCondition: true);
    }

    public override void Indicate(PlanBuilder plan, Item item)
    {
        Signal? margin = WhileCondition.Of(plan, item, While);
        if (WireEnds.WireOf(plan, item, item.From, "from") is not { } wire || (margin is null && item.Parameters.ContainsKey(While)))
        {
            return;
        }

        FeederPart part = plan.Feeders.PartOf(wire.Name);
        Busbar bus = part.BusOf(wire.Name);
        double factor = item.Get("power factor");
        double perWatt = Math.Sqrt(1 - (factor * factor)) / factor;
        double third = item.Get("power") * item.Get("share") / 3;
        double volts = item.Get("rated voltage");
        Keeping kind = item.Text("keeps") == KeepsPower ? Keeping.Power : Keeping.Impedance;
        SlotFunction whole = FeederSheet.Whole(plan, item);
        bool comesBack = ComingBack.Applies(item);
        SlotFunction on = comesBack ? ComingBack.IsRunning(plan, item) : _ => 1;
        SlotFunction starts = ComingBack.IsStarting(plan, item);
        (double startWatts, double startVars) = StartOf(item);
        List<Load> loads = [];
        foreach ((int phase, double weight) in new[] { (0, 1 + item.Get("unlike")), (1, 1.0), (2, 1 - item.Get("unlike")) })
        {
            Input watts = Follow(s => whole(s) * on(s) * weight * third);
            Input vars = Follow(s => whole(s) * on(s) * weight * third * perWatt);
            loads.Add(part.Draft.AddLoad(item.Name, bus[phase], bus[(phase + 1) % 3], kind, volts, watts, vars, kind == Keeping.Power ? 0.5 : 0));
            if (comesBack)
            {
                loads.Add(part.Draft.AddLoad($"start of {item.Name}", bus[phase], bus[(phase + 1) % 3], Keeping.Impedance, volts, Follow(s => whole(s) * starts(s) * weight * startWatts), Follow(s => whole(s) * starts(s) * weight * startVars)));
            }
        }

        if (comesBack)
        {
            ComingBack.Add(plan, item, FeederSheet.LineVolts(plan, wire.Name));
        }

        Slot shorted = plan.Fault(item, "shorted", ("resistance", 0.02))[0];
        loads.Add(part.Draft.AddLoad($"short of {item.Name}", bus[0], bus[1], Keeping.Impedance, volts, part.Follow(item.Name, s => s[shorted.Index] > 0 ? volts * volts / s[shorted.Index] : 0)));
        part.TellDrawn(Drawn(plan, item), [.. loads]);

        Input Follow(SlotFunction value) => margin is null ? part.Follow(item.Name, value) : part.Follow(item.Name, margin, value);
    }

    /// <summary>W and var of each phase while it starts, at its rated voltage.</summary>
    private static (double Watts, double Vars) StartOf(Item item)
    {
        (double times, double factor) = ComingBack.Start(item);
        double apparent = times * item.Get("power") * item.Get("share") / item.Get("power factor") / 3;
        return (apparent * factor, apparent * Math.Sqrt(1 - (factor * factor)));
    }

    private static Slot Drawn(PlanBuilder plan, Item item) => plan.SlotNamed($"consumption of {item.Name}");
}
