using Sightglass.Basics.Quantities;
using Sightglass.Book.Kinds;
using Sightglass.Book.Model;
using Sightglass.Network.Compile;
using Sightglass.Network.Phasors;
using Sightglass.Plant.Circuits;
using Sightglass.Plant.Feeders;
using Sightglass.Plant.Kinds.Electric;
using Sightglass.Plant.Kinds.Paths;
using Sightglass.Plant.Plans;
using Sightglass.Plant.Signals;

namespace Sightglass.Plant.Kinds.ThreePhase;

/// <summary>What feeds three phases.</summary>
public sealed class ThreePhaseSourceKind : KindBuilder
{
    public const string Name = "three-phase source";

    private const string While = "excited while";

    /// <summary>V of the frame over the neutral from which a ground is told: a seventh of the voltage of a phase of 480 V (common practice, no source).</summary>
    private const double GroundTold = 40;

    private static readonly double s_rootOfThree = Math.Sqrt(3);

    public override KindSheet Sheet { get; } = new()
    {
        Name = Name,
        Purpose = "An alternator with its regulator, an inverter, or the supply at the wayside.",
        Details = """
            An electromotive force in each phase behind the impedance that its regulator leaves; what drives it gives its voltage and frequency. Its neutral hangs on the frame by a resistance, so that one phase that touches the frame trips nothing and shifts the frame, which is
            told. Two sources that meet are not in step: each stands a third of a turn from the one before, for all the angles that they would pass, and breakers open. Source: synchronous machine behind its reactance (any text of machines); droop is a straight line.
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
        ],
        Quantities =
        [
            FeederSheet.Current, new("output", Dimension.Power, "What it gives."), new("loading", Dimension.One, "Share of its power that it gives."),
            new("frequency", Dimension.Frequency, "Of what it gives."), new("frame voltage", Dimension.Voltage, "Of the frame over the neutrals of all sources of the feeder."),
            new("overloaded", Dimension.One, "It gives more than its power.", IsCondition: true), new("grounded", Dimension.One, "Somewhere a phase touches the frame.", IsCondition: true),
        ],
        Faults = [FeederSheet.Open, FeederSheet.OpenPhase, new("low", "Its regulator holds too low a voltage.", [Parameter.Of("share", Dimension.One, "Of its voltage, missing.", "15 %", "1 %", "99 %")])],
    };

    public override void Declare(PlanBuilder plan, Item item)
    {
        (Slot power, Slot frame) = (Output(plan, item), FrameVolts(plan, item));
        double rated = item.Get("power");
        double frequency = item.Get("rated frequency");
        SlotSignal running = new(Speed(plan, item), frequency);
        FeederSheet.NameCurrent(plan, item);
        plan.Name($"output of {item.Name}", Dimension.Power, new SlotSignal(power));
        plan.Name($"loading of {item.Name}", Dimension.One, new SlotSignal(power, 1 / rated));
        plan.Name($"frequency of {item.Name}", Dimension.Frequency, new SumSignal([running, new ProductSignal(running, new SlotSignal(power, -item.Get("droop") / rated))]));
        plan.Name($"frame voltage of {item.Name}", Dimension.Voltage, new SlotSignal(frame));
        plan.Name($"overloaded of {item.Name}", Dimension.One, new SlotSignal(power, 1, -rated), isCondition: true);
        plan.Name($"grounded of {item.Name}", Dimension.One, new SlotSignal(frame, 1, -GroundTold), isCondition: true);
    }

    /// <summary>In the third pass, when every name of a condition is there.</summary>
    public override void Indicate(PlanBuilder plan, Item item)
    {
        Signal? margin = WhileCondition.Of(plan, item, While);
        if (WireEnds.WireOf(plan, item, item.To, "to") is not { } wire || (margin is null && item.Parameters.ContainsKey(While)))
        {
            return;
        }

        FeederPart part = plan.Feeders.PartOf(wire.Name);
        SlotFunction speed = Drive.Speed(plan, item);
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
        part.TellCurrent(FeederSheet.Amperes(plan, item), line);
        part.TellPower(Output(plan, item), line, inside);
        part.TellFrame(FrameVolts(plan, item));
        part.TellGiven(Speed(plan, item), part.Follow($"speed of {item.Name}", speed));
    }

    /// <summary>W that it gives.</summary>
    internal static Slot Output(PlanBuilder plan, Item item) => plan.SlotNamed($"output of {item.Name}");

    private static Slot Speed(PlanBuilder plan, Item item) => plan.SlotNamed($"speed of {item.Name}");

    private static Slot FrameVolts(PlanBuilder plan, Item item) => plan.SlotNamed($"frame voltage of {item.Name}");
}
