using Sightglass.Basics.Quantities;
using Sightglass.Book.Kinds;
using Sightglass.Book.Model;
using Sightglass.Network.Compile;
using Sightglass.Network.Phasors;
using Sightglass.Plant.Feeders;
using Sightglass.Plant.Plans;
using Sightglass.Plant.Signals;

namespace Sightglass.Plant.Kinds.ThreePhase;

/// <summary>Three phases at which paths meet.</summary>
public sealed class BusbarKind : KindBuilder
{
    /// <summary>Ω of its insulation to the frame, each phase: what a meter between bar and frame sees.</summary>
    private const double Insulation = 1e6;

    /// <summary>V at which the powers of its faults are told; they are impedances, so that any would do.</summary>
    private const double Told = 1000;

    public override KindSheet Sheet { get; } = new()
    {
        Name = "busbar",
        Purpose = "Three phases of alternating current at one place: the bars of a cabinet, or the power line through a vehicle where others meet it.",
        Details = """
            It loses nothing; what loses voltage is a three-phase cable between two of them. No neutral goes along. Whether it is live is told by what a meter shows at most between two bars or between one and the frame. Each phase is worked out by itself, so one that is
            open, touches the frame or another is nothing special. Source: nodal analysis of each phase (any text of distribution systems).
            """,
        Medium = "power",
        Role = KindRole.Wire,
        Alternates = true,
        Symbol = "line",
        Quantities =
        [
            new("voltage", Dimension.Voltage, "Between its phases, mean of the three."), new("greatest voltage", Dimension.Voltage, "Between any two bars, or one and the frame."),
            new("live", Dimension.One, "It has 50 V or more somewhere.", IsCondition: true),
        ],
        Faults =
        [
            new("grounded", "A phase touches the frame.", [FeederSheet.PhaseValue("Its number."), Parameter.Of("resistance", Dimension.Resistance, "Where it touches.", "1 Ohm", "1 mOhm", "1 MOhm")]),
            new("shorted", "Two phases touch.", [FeederSheet.PhaseValue("The first of the two; the other is the next."), Parameter.Of("resistance", Dimension.Resistance, "Where they touch.", "5 mOhm", "1 mOhm", "1 MOhm")]),
        ],
    };

    public override void Declare(PlanBuilder plan, Item item)
    {
        Slot greatest = FeederSheet.GreatestVolts(plan, item.Name);
        plan.Name($"voltage of {item.Name}", Dimension.Voltage, new SlotSignal(FeederSheet.LineVolts(plan, item.Name)));
        plan.Name($"greatest voltage of {item.Name}", Dimension.Voltage, new SlotSignal(greatest));
        plan.Name($"live of {item.Name}", Dimension.One, new SlotSignal(greatest, 1, -FeederSheet.Dangerous), isCondition: true);
    }

    public override void Connect(PlanBuilder plan, Item item)
    {
        FeederPart part = plan.Feeders.PartOf(item.Name);
        Busbar bus = part.BusOf(item.Name);
        var grounded = plan.Fault(item, "grounded", ("phase", 1), ("resistance", 1));
        var shorted = plan.Fault(item, "shorted", ("phase", 1), ("resistance", 0.005));
        for (int i = 0; i < 3; i++)
        {
            int phase = i + 1;
            Add(part, $"ground of {item.Name}", bus[i], part.Frame, s => (1 / Insulation) + (s[grounded[0].Index] == phase ? Siemens(s[grounded[1].Index]) : 0));
            Add(part, $"short of {item.Name}", bus[i], bus[phase % 3], s => s[shorted[0].Index] == phase ? Siemens(s[shorted[1].Index]) : 0);
        }

        part.Tell(FeederSheet.LineVolts(plan, item.Name), FeederOutputKind.LineVoltage, bus);
        part.Tell(FeederSheet.GreatestVolts(plan, item.Name), FeederOutputKind.GreatestVoltage, bus);
    }

    private static double Siemens(double ohms) => ohms > 0 ? 1 / ohms : 0;

    private static void Add(FeederPart part, string name, Terminal one, Terminal other, SlotFunction siemens) =>
        part.Draft.AddLoad(name, one, other, LoadKind.Impedance, Told, part.Follow(name, s => Told * Told * siemens(s)));
}
