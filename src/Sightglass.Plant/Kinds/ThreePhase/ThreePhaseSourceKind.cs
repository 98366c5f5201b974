using Sightglass.Basics.Quantities;
using Sightglass.Book.Kinds;
using Sightglass.Book.Model;
using Sightglass.Network.Compile;
using Sightglass.Network.Laws.Common;
using Sightglass.Network.Phasors;
using Sightglass.Plant.Circuits;
using Sightglass.Plant.Feeders;
using Sightglass.Plant.Kinds.Common;
using Sightglass.Plant.Kinds.Electric;
using Sightglass.Plant.Kinds.Paths;
using Sightglass.Plant.Plans;
using Sightglass.Plant.Signals;

namespace Sightglass.Plant.Kinds.ThreePhase;

/// <summary>What feeds three phases.</summary>
public sealed class ThreePhaseSourceKind : KindBuilder
{
    public const string Name = "three-phase source";

    /// <summary>The parameter that names the handle by whose position it is set.</summary>
    public const string SetBy = "set by";

    private const string While = "excited while";
    private const string PowerIn = "power in position";
    private const string FrequencyIn = "frequency in position";
    private const string BurnsIn = "engine burns in position";
    private const string GivesWay = "gives way in";
    private const string Inverter = "inverter";

    /// <summary>V of the frame over the neutral from which a ground is told: a seventh of the voltage of a phase of 480 V (common practice, no source).</summary>
    private const double GroundTold = 40;

    private static readonly double s_rootOfThree = Math.Sqrt(3);

    public override KindSheet Sheet { get; } = new()
    {
        Name = Name,
        Purpose = "An alternator with its regulator, an inverter, or the supply at the wayside.",
        Details = """
            An electromotive force in each phase behind the impedance that its regulator leaves; what drives it gives its voltage and frequency. Its neutral hangs on the frame by a resistance, so that one phase that touches the frame trips nothing and shifts the frame, which is
            told. Two sources that meet are not in step: each stands a third of a turn from the one before, for all the angles that they would pass, and breakers open. Its engine may turn at several speeds, geared or switched in poles so that the frequency stays: a handle says which, with the power and the frequency of each. Asked for more than its power, what
            drives it loses speed: by as much as it is asked too much, with a lag. An inverter gives its frequency at whatever speed, and no more current than its limit: into a short it lowers its voltage instead, and a breaker that a machine would trip stays on. Source: synchronous machine behind its reactance (any text of machines); droop and giving
            way are straight lines; inverters of 1.1 to 2 times their rated current (IEEE 1547.7 and papers on faults of inverters, from memory).
            """,
        Medium = "power",
        Role = KindRole.Path,
        Conducts = true,
        Alternates = true,
        Symbol = "source",
        Ports = [new("to", "The busbar that it feeds.")],
        Parameters =
        [
            Parameter.Of("volts", Dimension.Voltage, "Between phases, without load.", "480 V", "1 V", "50 kV"),
            Parameter.Needed("power", Dimension.Power, "What it may give for ever.", "1 W", "100 MW"),
            Parameter.Of("inner impedance", Dimension.One, "What its regulator leaves, as a share of the impedance that would take its power.", "4 %", "0.0001 %", "100 %"),
            Parameter.Of("rated frequency", Dimension.Frequency, "At full speed, without load.", "60 Hz", "1 Hz", "1000 Hz"),
            Parameter.Of("droop", Dimension.One, "Share by which its frequency has fallen at full power.", "0 %", "0 %", "20 %"),
            Parameter.Of("neutral resistance", Dimension.Resistance, "From its neutral to the frame.", "1 kOhm", "1 mOhm", "1 MOhm"),
            Parameter.Item("driven by", "A switch or an engine that drives it, at full speed in any position but its first, or a transmitter or contactor that tells its speed; always on where there is none."),
            new(While, ParameterType.Formula, Dimension.One, "Where something switches its field; always where nothing is written."),
            Parameter.Item(SetBy, "The handle that says at which speed it is driven, and with which gear."),
            new(PowerIn, ParameterType.ByPosition, Dimension.Power, "What it may give for ever in each position of that handle, where it is not the same in all.", Minimum: "1 W", Maximum: "100 MW"),
            new(FrequencyIn, ParameterType.ByPosition, Dimension.Frequency, "Without load in each position, where it is not the same in all.", Minimum: "1 Hz", Maximum: "1000 Hz"),
            new(BurnsIn, ParameterType.ByPosition, Dimension.VolumeFlow, "What the engine that turns it burns at least in each position to keep its speed, while the field is on.", Minimum: "0 L/h", Maximum: "1000 L/h"),
            Parameter.Of(GivesWay, Dimension.Second, "Time in which what drives it has lost 63 % of the speed that it loses when it is asked for more than its power; it loses none where nothing is written.", least: "0.1 s", most: "10 min"),
            new(Inverter, ParameterType.YesNo, Dimension.One, "Whether it is one: the same frequency at any speed, and a limited current.", Default: "no"),
            Parameter.Of("current limit", Dimension.One, "Of an inverter: the most that it gives, over the current of its power.", "150 %", "100 %", "1000 %"),
        ],
        Quantities =
        [
            FeederSheet.Current, new("output", Dimension.Power, "What it gives."), new("loading", Dimension.One, "Share of its power that it gives."),
            new("frequency", Dimension.Frequency, "Of what it gives."), new("frame voltage", Dimension.Voltage, "Of the frame over the neutrals of all sources of the feeder."),
            new("overloaded", Dimension.One, "It gives more than its power.", IsCondition: true), new("limited", Dimension.One, "An inverter that gives no more current and lowers its voltage.", IsCondition: true), new("grounded", Dimension.One, "Somewhere a phase touches the frame.", IsCondition: true),
        ],
        Faults = [FeederSheet.Open, FeederSheet.OpenPhase, new("low", "Its regulator holds too low a voltage.", [Parameter.Of("share", Dimension.One, "Of its voltage, missing.", "15 %", "1 %", "99 %")])],
    };

    public override void Declare(PlanBuilder plan, Item item)
    {
        (Slot power, Slot frame) = (Output(plan, item), FrameVolts(plan, item));
        ProductSignal loading = new(new SlotSignal(power), new SlotSignal(PerWatt(plan, item)));
        SlotSignal running = new(Frequency(plan, item));
        Signal driven = new SumSignal([running, new ProductSignal(running, new ProductSignal(loading, new ConstantSignal(-item.Get("droop"))))]);
        FeederSheet.NameCurrent(plan, item);
        plan.Name($"output of {item.Name}", Dimension.Power, new SlotSignal(power));
        plan.Name($"loading of {item.Name}", Dimension.One, loading);
        plan.Name($"frequency of {item.Name}", Dimension.Frequency, IsInverter(item) ? running : GivingWay(plan, item) is { } lost ? new ProductSignal(driven, new MarginSignal(lost, 1, -1)) : driven);
        plan.Name($"frame voltage of {item.Name}", Dimension.Voltage, new SlotSignal(frame));
        plan.Name($"overloaded of {item.Name}", Dimension.One, new MarginSignal(loading, 1, 1), isCondition: true);
        plan.Name($"limited of {item.Name}", Dimension.One, new SlotSignal(Limited(plan, item), 1, -0.5), isCondition: true);
        plan.Name($"grounded of {item.Name}", Dimension.One, new SlotSignal(frame, 1, -GroundTold), isCondition: true);
    }

    /// <summary>In the third pass, when every name of a condition is there.</summary>
    public override void Indicate(PlanBuilder plan, Item item)
    {
        Signal? margin = WhileCondition.Of(plan, item, While);
        if (WireEnds.WireOf(plan, item, item.To, "to") is not { } wire || (margin is null && item.Parameters.ContainsKey(While))
            || InPosition(plan, item, PowerIn, "power") is not { } power || InPosition(plan, item, FrequencyIn, "rated frequency") is not { } frequency)
        {
            return;
        }

        FeederPart part = plan.Feeders.PartOf(wire.Name);
        SlotFunction turning = Drive.Speed(plan, item);
        SlotFunction speed = IsInverter(item) ? s => turning(s) > 0 ? 1 : 0 : turning;
        SlotFunction whole = FeederSheet.Whole(plan, item);
        Slot low = plan.Fault(item, "low", ("share", 0.15))[0];
        double volts = item.Get("volts") / s_rootOfThree;
        SlotFunction given = s => volts * speed(s) * (1 - s[low.Index]);
        Input force = margin is null ? part.Follow(item.Name, given) : part.Follow(item.Name, margin, given);
        Busbar inside = part.NewBus($"inside of {item.Name}");
        Phasor angle = Phasor.OfPhase(part.Sources++ % 3);
        for (int phase = 0; phase < 3; phase++)
        {
            part.Draft.Hold(inside[phase], force, Phasor.OfPhase(phase) * angle);
        }

        // R/X of a machine of this size is about a tenth (common practice, no source).
        double z = item.Get("inner impedance") * item.Get("volts") * item.Get("volts") / item.Get("power");
        Input[] phases = part.Phases(item.Name, s => speed(s) > 0 ? whole(s) : 0, FeederSheet.OpenPhaseOf(plan, item));
        Line line = part.AddLine(item.Name, inside, part.BusOf(wire.Name), 0.0995 * z, 0.995 * z, phases);
        part.Draft.AddLine($"neutral of {item.Name}", [part.Neutral], [part.Frame], [new(item.Get("neutral resistance"), 0)]);
        if (IsInverter(item))
        {
            part.TellLimited(Limited(plan, item), part.Limit(force, line, item.Get("current limit") * item.Get("power") / (s_rootOfThree * item.Get("volts"))));
        }

        part.TellCurrent(FeederSheet.Amperes(plan, item), line);
        part.TellPower(Output(plan, item), line, inside);
        part.TellFrame(FrameVolts(plan, item));
        part.TellGiven(Frequency(plan, item), part.Follow($"frequency of {item.Name}", s => speed(s) * frequency(s)));
        part.TellGiven(PerWatt(plan, item), part.Follow($"power of {item.Name}", s => 1 / power(s)));
        part.TellGiven(Force(plan, item), force);
    }

    /// <summary>W that it gives.</summary>
    internal static Slot Output(PlanBuilder plan, Item item) => plan.SlotNamed($"output of {item.Name}");

    /// <summary>m³/s that its engine burns at least, while it has a field and turns; null after an error.</summary>
    internal static SlotFunction? Burns(PlanBuilder plan, Item item)
    {
        Slot force = Force(plan, item);
        return !item.Parameters.ContainsKey(BurnsIn) ? _ => 0 : ByPosition.Of(plan, item, SetBy, BurnsIn) is { } least ? s => s[force.Index] > 0 ? least(s) : 0 : null;
    }

    private static bool IsInverter(Item item) => item.Text(Inverter) == "yes";

    /// <summary>What a parameter says for each position, else what another says for all; null after an error.</summary>
    private static SlotFunction? InPosition(PlanBuilder plan, Item item, string byPosition, string always)
    {
        double same = item.Get(always);
        return item.Parameters.ContainsKey(byPosition) ? ByPosition.Of(plan, item, SetBy, byPosition) : _ => same;
    }

    /// <summary>Share of its speed that it has lost, because it is asked for too much; null where it loses none.</summary>
    private static PotentialSignal? GivingWay(PlanBuilder plan, Item item)
    {
        if (item.Find(GivesWay) is not { } time)
        {
            return null;
        }

        (Slot power, Slot perWatt) = (Output(plan, item), PerWatt(plan, item));
        int network = plan.NetworkOf(item, Fluid.Charge);
        return new(network, LagNumber.Add(plan, network, $"speed lost of {item.Name}", Lag.Follower(time), s => Math.Clamp((s[power.Index] * s[perWatt.Index]) - 1, 0, 1)));
    }

    private static Slot Force(PlanBuilder plan, Item item) => plan.SlotNamed($"force of {item.Name}");

    private static Slot Frequency(PlanBuilder plan, Item item) => plan.SlotNamed($"frequency of {item.Name}");

    private static Slot PerWatt(PlanBuilder plan, Item item) => plan.SlotNamed($"share per watt of {item.Name}");

    private static Slot Limited(PlanBuilder plan, Item item) => plan.SlotNamed($"limited of {item.Name}");

    private static Slot FrameVolts(PlanBuilder plan, Item item) => plan.SlotNamed($"frame voltage of {item.Name}");
}
